using Cablewright.Storage;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Hosting;

/// <summary>
/// Prepares the database and follows its changes. Whatever goes wrong in a turn, the service runs on and tries again at the
/// next; the log says it once, and again when it is something else.
/// </summary>
internal sealed partial class CatalogueFollower(
    Database database, Catalogues catalogues, StorageSettings settings, ILogger<CatalogueFollower> log) : BackgroundService
{
    private string? trouble;

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var turns = new PeriodicTimer(settings.PollInterval);
        bool isPrepared = false;
        do
        {
            try
            {
                if (!isPrepared) await database.MigrateAsync(stoppingToken);
                isPrepared = true;
                await catalogues.RefreshAsync(stoppingToken);
                if (trouble is not null) LogFound(log);
                trouble = null;
            }
            catch (Exception error) when (!stoppingToken.IsCancellationRequested)
            {
                string cause = error.GetBaseException().Message;
                if (cause != trouble) LogLost(log, error);
                trouble = cause;
            }
        }
        while (await turns.WaitForNextTickAsync(stoppingToken));
    }

    [LoggerMessage(LogLevel.Error, "The database cannot be used; computing and reading kits go on")]
    private static partial void LogLost(ILogger log, Exception error);

    [LoggerMessage(LogLevel.Warning, "The database can be used again")]
    private static partial void LogFound(ILogger log);
}
