using Serilog;
using Serilog.AspNetCore;
using Serilog.Core;
using Serilog.Events;
using Serilog.Formatting.Compact;

namespace Cablewright.Service.Hosting;

/// <summary>
/// One line of compact JSON a request on standard output: what was asked of which route, how it ended, how long it took.
/// </summary>
internal static class RequestLog
{
    private const string Line = "{Method} {Route} answered {StatusCode} in {Elapsed:0.000} ms";

    /// <summary>Sets up the log of one host; hosts in one process do not share it.</summary>
    public static void Configure(HostBuilderContext context, IServiceProvider services, LoggerConfiguration log) => log
        .MinimumLevel.Information()
        .MinimumLevel.Override("Microsoft", LogEventLevel.Warning)
        .MinimumLevel.Override("System", LogEventLevel.Warning)
        .Enrich.FromLogContext()
        .Enrich.With<WithoutPath>()
        .WriteTo.Console(new CompactJsonFormatter());

    /// <summary>Keeps out of the line whatever a caller typed: paths, queries, ids.</summary>
    public static void Configure(RequestLoggingOptions options, Serilog.ILogger logger)
    {
        options.Logger = logger;
        options.MessageTemplate = Line;
        options.IncludeQueryInRequestPath = false;
        options.GetLevel = (context, _, failure) => LevelOf(context.Response.StatusCode, failure);
        options.GetMessageTemplateProperties = (context, _, elapsed, status) =>
        [
            new LogEventProperty("Method", new ScalarValue(KnownMethod(context.Request.Method))),
            new LogEventProperty("Route", new ScalarValue(RouteOf(context))),
            new LogEventProperty("StatusCode", new ScalarValue(status)),
            new LogEventProperty("Elapsed", new ScalarValue(elapsed)),
        ];
    }

    /// <summary>The framework adds the path to every event of a request; a path is what the caller typed.</summary>
    private sealed class WithoutPath : ILogEventEnricher
    {
        public void Enrich(LogEvent logEvent, ILogEventPropertyFactory propertyFactory) =>
            logEvent.RemovePropertyIfPresent("RequestPath");
    }

    /// <summary>A service that is too busy or not ready says so on purpose: only a failure is an error.</summary>
    private static LogEventLevel LevelOf(int status, Exception? failure) => failure is not null || status == 500
        ? LogEventLevel.Error
        : status > 500 ? LogEventLevel.Warning : LogEventLevel.Information;

    private static string RouteOf(HttpContext context) =>
        (context.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText ?? "(no route)";

    private static string KnownMethod(string method) =>
        HttpMethods.IsGet(method) || HttpMethods.IsPost(method) || HttpMethods.IsHead(method) || HttpMethods.IsPut(method)
        || HttpMethods.IsDelete(method) || HttpMethods.IsOptions(method) || HttpMethods.IsPatch(method) ? method : "(other)";
}
