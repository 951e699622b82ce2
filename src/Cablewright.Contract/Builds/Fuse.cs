using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Builds;

/// <summary>What is known of a fuse. Without a rating it is chosen.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Fuse
{
    /// <summary><c>false</c>: there is none, and none shall be chosen; nothing else is then stated.</summary>
    [Example(true)]
    public bool? Fitted { get; init; }

    /// <summary>Rated current.</summary>
    [Quantity(QuantityKind.Current, "0.5 A", "2000 A", "150 A")]
    public string? Rating { get; init; }

    /// <summary>The family it belongs to.</summary>
    public FuseFamilyName? Family { get; init; }

    /// <summary>Length of conductor between the end of the run where the fuse stands and the fuse.</summary>
    [Quantity(QuantityKind.Length, "0 m", "100 m", "12 in")]
    public string? DistanceFromSource { get; init; }

    /// <summary>The part's own voltage rating.</summary>
    [Quantity(QuantityKind.Voltage, "6 V", "1000 V", "32 V")]
    public string? VoltageRating { get; init; }

    /// <summary>The largest short-circuit current that the part itself is rated to interrupt at the system's voltage.</summary>
    [Quantity(QuantityKind.Current, "10 A", "200000 A", "6000 A")]
    public string? InterruptingRating { get; init; }

    /// <summary>Each conductor of a parallel run has a fuse of this rating of its own.</summary>
    [Example(false)]
    public bool? PerConductor { get; init; }

    /// <summary>The largest conductor that its holder accepts.</summary>
    [ConductorSize]
    public string? LargestConductor { get; init; }

    /// <summary>
    /// The part's own time-current curve, each point at a larger current than the one before; its family's band where left out.
    /// </summary>
    public IReadOnlyList<OpeningTime>? OpeningTimes { get; init; }
}
