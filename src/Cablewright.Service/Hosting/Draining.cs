namespace Cablewright.Service.Hosting;

/// <summary>
/// Goes on answering for a while after the service was told to stop, so that whoever sends it requests sees first that it is no
/// longer ready. Only then do the listeners close and the requests under way finish.
/// </summary>
internal sealed class Draining(LoadSettings settings) : IHostedLifecycleService
{
    /// <summary>What requests under way have to finish, besides the time in which new ones still come.</summary>
    private static readonly TimeSpan Finishing = TimeSpan.FromSeconds(30);

    /// <summary>Sets it up.</summary>
    public static void Add(IServiceCollection services)
    {
        services.AddHostedService<Draining>();
        services.AddOptions<HostOptions>().Configure<LoadSettings>(
            (host, load) => host.ShutdownTimeout = TimeSpan.FromSeconds(load.DrainSeconds) + Finishing);
    }

    /// <inheritdoc/>
    public Task StoppingAsync(CancellationToken cancellationToken) =>
        Task.Delay(TimeSpan.FromSeconds(settings.DrainSeconds), cancellationToken);

    /// <inheritdoc/>
    public Task StartingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StartedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
