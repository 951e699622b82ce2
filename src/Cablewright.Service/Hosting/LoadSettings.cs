namespace Cablewright.Service.Hosting;

/// <summary>How much the service takes on at once, for how long and from whom; from the section <c>Cablewright</c>.</summary>
internal sealed record LoadSettings
{
    private const string Section = "Cablewright";

    /// <summary>The longest that one computation may take, in seconds.</summary>
    public double ComputationSeconds { get; init; } = 10;

    /// <summary>How many computations run at once.</summary>
    public int ComputationsAtOnce { get; init; } = Environment.ProcessorCount;

    /// <summary>How many more calls wait for a place; any further one is refused.</summary>
    public int ComputationsWaiting { get; init; } = 16 * Environment.ProcessorCount;

    /// <summary>The longest that a call waits for a place, in seconds.</summary>
    public double WaitingSeconds { get; init; } = 2;

    /// <summary>The work that callers without a key may ask for, by address, in units a minute; 0 for any.</summary>
    public double AnonymousWorkPerMinute { get; init; } = 3_000_000;

    /// <summary>The work that the callers with a shop's keys may ask for together, in units a minute; 0 for any.</summary>
    public double ShopWorkPerMinute { get; init; } = 60_000_000;

    /// <summary>The most memory that request bodies take up together, in MB.</summary>
    public int BodyMegabytes { get; init; } = 64;

    /// <summary>The longest that a body which is held in memory may take to arrive, in seconds.</summary>
    public double BodySeconds { get; init; } = 60;

    /// <summary>How long the service goes on once it is told to stop and no longer ready, in seconds.</summary>
    public double DrainSeconds { get; init; } = 3;

    /// <summary>What is configured.</summary>
    /// <exception cref="InvalidOperationException">A setting has a value that it cannot have.</exception>
    public static LoadSettings Of(IConfiguration configuration)
    {
        LoadSettings load = configuration.GetSection(Section).Get<LoadSettings>() ?? new();
        Require(load.ComputationSeconds > 0, nameof(ComputationSeconds), "above 0");
        Require(load.ComputationsAtOnce > 0, nameof(ComputationsAtOnce), "1 or more");
        Require(load.ComputationsWaiting >= 0, nameof(ComputationsWaiting), "0 or more");
        Require(load.WaitingSeconds > 0, nameof(WaitingSeconds), "above 0");
        Require(load.AnonymousWorkPerMinute >= 0, nameof(AnonymousWorkPerMinute), "0 or more");
        Require(load.ShopWorkPerMinute >= 0, nameof(ShopWorkPerMinute), "0 or more");
        Require(load.BodyMegabytes > 0, nameof(BodyMegabytes), "1 or more");
        Require(load.BodySeconds > 0, nameof(BodySeconds), "above 0");
        Require(load.DrainSeconds >= 0, nameof(DrainSeconds), "0 or more");
        return load;
    }

    private static void Require(bool holds, string setting, string accepted)
    {
        if (!holds) throw new InvalidOperationException($"The setting {Section}:{setting} must be {accepted}.");
    }
}
