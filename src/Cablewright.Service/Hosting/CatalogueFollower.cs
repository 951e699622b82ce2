using Cablewright.Storage;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Hosting;

/// <summary>
/// Prepares the database and follows its changes. Without a database the service runs on, and tries again at every turn.
/// </summary>
internal sealed partial class CatalogueFollower(
    Database database, Catalogues catalogues, StorageSettings settings, ILogger<CatalogueFollower> log) : BackgroundService
{
    private bool _isReachable = true;

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
                if (!_isReachable) LogFound(log);
                _isReachable = true;
            }
            catch (StorageUnavailableException error)
            {
                if (_isReachable) LogLost(log, error);
                _isReachable = false;
            }
        }
        while (await turns.WaitForNextTickAsync(stoppingToken));
    }

    [LoggerMessage(LogLevel.Error, "The database cannot be used; computing goes on, the catalogue answers 503")]
    private static partial void LogLost(ILogger log, Exception error);

    [LoggerMessage(LogLevel.Warning, "The database can be used again")]
    private static partial void LogFound(ILogger log);
}
