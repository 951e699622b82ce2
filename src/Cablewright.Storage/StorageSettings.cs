namespace Cablewright.Storage;

/// <summary>Where the catalogue is kept, and how closely an instance follows it. Read from the section <see cref="Section"/>.</summary>
public sealed class StorageSettings
{
    /// <summary>The section of the configuration that holds these settings.</summary>
    public const string Section = "Cablewright:Storage";

    /// <summary>The connection string of a PostgreSQL database; where left out, an SQLite file is used.</summary>
    public string? PostgreSql { get; set; }

    /// <summary>The SQLite file; where left out, <c>cablewright/cablewright.db</c> in the user's own data folder.</summary>
    public string? SqliteFile { get; set; }

    /// <summary>How often an instance asks for changes that others made.</summary>
    public TimeSpan PollInterval { get; set; } = TimeSpan.FromSeconds(1);

    /// <summary>How long after the last look at the database its catalogue may still be shown.</summary>
    public TimeSpan MaxAge { get; set; } = TimeSpan.FromSeconds(5);

    /// <summary>The SQLite file with its default put in.</summary>
    public string SqlitePath => SqliteFile ?? Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify),
        "cablewright",
        "cablewright.db");
}
