using Cablewright.Service.Answers;
using Cablewright.Service.Documents;
using Cablewright.Service.Health;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Serilog;

namespace Cablewright.Service.Hosting;

/// <summary>Puts the service together, up to the routes.</summary>
internal static class ServiceHost
{
    /// <summary>A host whose pipeline names, logs and checks every request and turns every failure into a problem.</summary>
    public static WebApplication Build(string[] args)
    {
        ShapeReader.Prepare(AnswerJson.Shapes.Build);
        ShapeReader.Prepare(AnswerJson.Shapes.BenchReport);
        ShapeReader.Prepare(AnswerJson.Shapes.KitCheck);
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(args);
        Addresses.UseDefault(builder);
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.AddServerHeader = false);
        builder.Host.UseSerilog(RequestLog.Configure, preserveStaticLogger: true);
        builder.Services.AddContract();

        WebApplication app = builder.Build();
        app.Use(Correlation.Apply);
        app.Use(SecurityHeaders.Apply);
        app.Use(HeadRequests.Apply);
        app.UseSerilogRequestLogging(log => RequestLog.Configure(log, app.Services.GetRequiredService<Serilog.ILogger>()));
        app.UseExceptionHandler(new ExceptionHandlerOptions
        {
            ExceptionHandler = UnansweredRequests.OnException,
            AllowStatusCode404Response = true,
        });
        app.UseStatusCodePages(UnansweredRequests.OnEmptyAnswer);
        app.UseContractPages();
        app.UseRouting();
        app.Use(AcceptGate.Apply);
        Addresses.AnnounceWhenStarted(app);
        app.Lifetime.ApplicationStarted.Register(() => _ = ReferenceBuild.GivesItsKnownAnswer.Value);
        return app;
    }
}
