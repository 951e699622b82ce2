using Cablewright.Engine.Audits;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Kits;

/// <summary>A cable of a kit at the size that it really has.</summary>
/// <param name="Index">Its place among the kit's parts.</param>
/// <param name="Part">The part.</param>
/// <param name="Conductor">What it is tried as: its label, or where its strands say less, the largest size that they
/// fill.</param>
/// <param name="StrandsMm2">The metal that its strands hold, where they are stated.</param>
/// <param name="LabelMm2">The least that its label allows.</param>
internal sealed record KitWire(int Index, KitPart Part, Conductor Conductor, double? StrandsMm2, double LabelMm2)
{
    private const double SquareMillimetres = 1e6;

    public bool IsBelowLabel => StrandsMm2 is { } holds && Significant.Exceeds(LabelMm2, holds);

    public static KitWire Of(KitPart part, int index, Ruleset ruleset)
    {
        double label = TrueSize.LeastAreaOf(part.Size!, ruleset);
        double? strands = part is { StrandCount: { } count, StrandMetres: { } diameter }
            ? count * Math.PI / 4 * diameter * diameter * SquareMillimetres
            : null;
        ConductorSize size = strands is { } holds && Significant.Exceeds(label, holds)
            ? TrueSize.LargestGaugeFor(holds, ruleset) ?? ConductorSize.All[0]
            : part.Size!;
        return new KitWire(index, part, Conductor.Of(size, part.Material ?? Material.Copper), strands, label);
    }

    public static IReadOnlyList<KitWire> In(Kit kit, KitPartKind kind, Ruleset ruleset) =>
        [.. kit.Parts.Select((part, index) => (Part: part, Index: index))
            .Where(entry => entry.Part.Kind == kind)
            .Select(entry => Of(entry.Part, entry.Index, ruleset))
            .OrderBy(wire => wire.Conductor.OhmsPerMetreAt20)];
}
