namespace Cablewright.Service.Documents;

/// <summary>What operations stand under in the contract.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What stands under it.</param>
internal sealed record Tag(string Name, string Description)
{
    public static readonly Tag Assessments = new("assessments", "A build in, an assessment with its reasons out.");

    public static readonly Tag Audits = new("audits", "Measurements of a cable in, what it truly is out.");

    public static readonly Tag Reference = new("reference", "The tables behind the answers, each figure with its source.");

    public static readonly Tag Rulesets = new(
        "rulesets", "The limits that verdicts rest on, versioned and never changed once published.");

    public static readonly Tag Kits = new("kits", "Wiring kits: held against builds, and kept for a shop.");

    /// <summary>What is asked of every instance, at any rate.</summary>
    public static readonly Tag Health = new("health", "How the service is.");

    /// <summary>All of them, in the order of the contract.</summary>
    public static IReadOnlyList<Tag> All { get; } = [Assessments, Audits, Reference, Rulesets, Kits, Health];
}
