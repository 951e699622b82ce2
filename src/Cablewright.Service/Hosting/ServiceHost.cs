using System.Reflection;
using Cablewright.Service.Answers;
using Cablewright.Service.Computing;
using Cablewright.Service.Documents;
using Cablewright.Service.Health;
using Cablewright.Service.Json;
using Cablewright.Service.Keys;
using Cablewright.Service.Kits;
using Cablewright.Service.Problems;
using Cablewright.Service.Queries;
using Cablewright.Storage;
using Serilog;

namespace Cablewright.Service.Hosting;

/// <summary>Puts the service together, up to the routes.</summary>
internal static class ServiceHost
{
    private const string ContractWriter = "GetDocument.Insider";

    /// <summary>A host whose pipeline names, logs and checks every request and turns every failure into a problem.</summary>
    public static WebApplication Build(string[] args)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(args);
        Addresses.UseDefault(builder);
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.AddServerHeader = false);
        builder.Host.UseSerilog(RequestLog.Configure, preserveStaticLogger: true);
        builder.Services.AddContract();
        AddCatalogue(builder);
        builder.Services.AddSingleton(services => LoadSettings.Of(services.GetRequiredService<IConfiguration>()));
        builder.Services.AddSingleton<RequestBodies>();
        Computations.Add(builder.Services);
        Draining.Add(builder.Services);
        BrowserCallers.Add(builder);
        Compression.Add(builder.Services);

        WebApplication app = builder.Build();
        KeepThreadsFree(app.Services.GetRequiredService<LoadSettings>());
        Proxies.Use(app);
        app.Use(Correlation.Apply);
        app.Use(SecurityHeaders.Apply);
        Variance.Use(app);
        app.Use(HeadRequests.Apply);
        // Before everything that a liveness check does without.
        app.UseRouting();
        Compression.Use(app);
        app.UseSerilogRequestLogging(log => RequestLog.Configure(log, app.Services.GetRequiredService<Serilog.ILogger>()));
        app.UseExceptionHandler(new ExceptionHandlerOptions
        {
            ExceptionHandler = UnansweredRequests.OnException,
            AllowStatusCode404Response = true,
            SuppressDiagnosticsCallback = context => context.Exception is StorageUnavailableException or BadHttpRequestException,
        });
        app.UseStatusCodePages(UnansweredRequests.OnEmptyAnswer);
        app.UseContractPages();
        BrowserCallers.Use(app);
        app.Use(ApiKeyAuthentication.Identify);
        app.Use(WorkCharges.Admit);
        app.Use(ApiKeyAuthentication.Admit);
        app.Use(ContentNegotiation.Apply);
        app.Use(QueryValidation.Apply);
        Addresses.AnnounceWhenStarted(app);
        app.Lifetime.ApplicationStarted.Register(() => _ = ReferenceBuild.GivesItsKnownAnswer.Value);
        return app;
    }

    /// <summary>
    /// Computations run on threads of the pool. With as many more, reading and answering never waits for the pool to notice that
    /// all of them are busy, which takes it half a second.
    /// </summary>
    private static void KeepThreadsFree(LoadSettings settings)
    {
        ThreadPool.GetMinThreads(out int workers, out int completions);
        ThreadPool.SetMinThreads(Math.Max(workers, Environment.ProcessorCount + settings.ComputationsAtOnce), completions);
    }

    /// <summary>The tool that writes the contract at build time starts a host too, and must leave no database behind.</summary>
    private static void AddCatalogue(WebApplicationBuilder builder)
    {
        builder.Services.AddStorage(
            builder.Configuration.GetSection(StorageSettings.Section).Get<StorageSettings>() ?? new());
        builder.Services.AddSingleton<ShopKits>();
        if (Assembly.GetEntryAssembly()?.GetName().Name != ContractWriter) builder.Services.AddHostedService<CatalogueFollower>();
    }
}
