using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Builds;

/// <summary>
/// One amplifier. At least one of rated output, rated input current and on-board fuse is stated; a rated input current takes
/// precedence over a rated output.
/// </summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
public sealed record Amplifier
{
    /// <summary>
    /// Its place name: its positive terminal for supply runs, its negative terminal for return runs. 1 to 40 letters, digits,
    /// <c>-</c> and <c>_</c>; <c>body</c> and <c>engine</c> are taken.
    /// </summary>
    [Identifier("bass", NamesPlace = true)]
    public required string Id { get; init; }

    /// <summary>What a person calls it; sentences of the answer use it in the place of the id.</summary>
    [Text(ContractLimits.NameLength, "Four-channel amplifier")]
    public string? Name { get; init; }

    /// <summary>Rated output of all channels together.</summary>
    [Quantity(QuantityKind.Power, "1 W", "50000 W", "1000 W")]
    public string? RatedOutput { get; init; }

    /// <summary>Input current at rated output as its maker states it.</summary>
    [Quantity(QuantityKind.Current, "0.1 A", "5000 A", "95 A")]
    public string? RatedInputCurrent { get; init; }

    /// <summary>The sum of the fuses on the amplifier itself.</summary>
    [Quantity(QuantityKind.Current, "0.5 A", "2000 A", "80 A")]
    public string? Fuse { get; init; }

    /// <summary>The class of its output stage.</summary>
    public AmplifierClass? AmplifierClass { get; init; }

    /// <summary>Output over input power at rated output.</summary>
    [Quantity(QuantityKind.Ratio, "5 %", "100 %", "80 %")]
    public string? Efficiency { get; init; }

    /// <summary>How its converter treats a falling supply.</summary>
    public PowerSupply? PowerSupply { get; init; }

    /// <summary>What it plays; not together with <c>crestFactor</c>.</summary>
    public Programme? Programme { get; init; }

    /// <summary>Crest factor of the programme at clip onset; in place of <c>programme</c>.</summary>
    [Quantity(QuantityKind.Level, "3 dB", "30 dB", "9 dB")]
    public string? CrestFactor { get; init; }

    /// <summary>The largest conductor that its terminals accept.</summary>
    [ConductorSize]
    public string? LargestConductor { get; init; }

    /// <summary>How many supply terminals it has, and as many for the return; 1 where left out.</summary>
    [Figure("1", 1, Smallest = 1, Largest = 8)]
    public int? Terminals { get; init; }

    /// <summary>The supply voltages that it works at; 9 to 16 V where left out.</summary>
    public SupplyRange? SupplyRange { get; init; }
}
