using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;

namespace Cablewright.Contract.Builds;

/// <summary>One point of a fuse's own time-current curve.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record OpeningTime
{
    /// <summary>The current over the fuse's rating.</summary>
    [Quantity(QuantityKind.Ratio, "100 %", "2000 %", "200 %")]
    public required string ShareOfRating { get; init; }

    /// <summary>It holds for at least this long.</summary>
    [Quantity(QuantityKind.Duration, "1 ms", "10 h", "1 s")]
    public required string Fastest { get; init; }

    /// <summary>It has opened after this long; left out where it need not open.</summary>
    [Quantity(QuantityKind.Duration, "1 ms", "10 h", "15 s")]
    public string? Slowest { get; init; }
}
