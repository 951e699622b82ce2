namespace Cablewright.Storage;

/// <summary>
/// Where the catalogue is kept, and how closely an instance follows it. Read from the section <see cref="Section"/>.
/// </summary>
public sealed class StorageSettings
{
    /// <summary>The section of the configuration that holds these settings.</summary>
    public const string Section = "Cablewright:Storage";

    private const long Mebibyte = 1024 * 1024;

    /// <summary>The connection string of a PostgreSQL database; where left out, an SQLite file is used.</summary>
    public string? PostgreSql { get; set; }

    /// <summary>The SQLite file; where left out, <c>cablewright/cablewright.db</c> in the user's own data folder.</summary>
    public string? SqliteFile { get; set; }

    /// <summary>How often an instance asks for changes that others made.</summary>
    public TimeSpan PollInterval { get; set; } = TimeSpan.FromSeconds(1);

    /// <summary>
    /// How long after the last look at the database its keys are still believed: one that was revoked since opens the shop
    /// until then.
    /// </summary>
    public TimeSpan KeysTrustedFor { get; set; } = TimeSpan.FromMinutes(15);

    /// <summary>
    /// How long a caller is kept waiting for one write or read: connecting, waiting for locks and committing together.
    /// </summary>
    public TimeSpan Timeout { get; set; } = TimeSpan.FromSeconds(5);

    /// <summary>Most kits of one shop.</summary>
    public int KitsPerShop { get; set; } = 10_000;

    /// <summary>Most bytes of all kits of one shop together; they are in the memory of every instance.</summary>
    public long KitBytesPerShop { get; set; } = 32 * Mebibyte;

    /// <summary>Most records of one shop.</summary>
    public int RecordsPerShop { get; set; } = 100_000;

    /// <summary>Most bytes of all records of one shop together.</summary>
    public long RecordBytesPerShop { get; set; } = 1024 * Mebibyte;

    /// <summary>The SQLite file with its default put in.</summary>
    public string SqlitePath => SqliteFile ?? Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify),
        "cablewright",
        "cablewright.db");
}
