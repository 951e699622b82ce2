using Cablewright.Engine.Kits;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Kits;

/// <summary>Everything of a kit but its cables and fuses, against what the job needs.</summary>
/// <remarks>What such a job takes is common practice without a source, but for the grommet (one for each metal wall
/// pierced).</remarks>
internal sealed class KitSundries(KitIssues issues, Phrase phrase, BillOfMaterials needs, Ruleset ruleset)
{
    public void Check(Kit kit)
    {
        int terminals = needs.Pieces.Where(piece => !piece.IsVehicles).Sum(piece => piece.RingTerminals);
        Count(kit, KitPartKind.RingTerminal, "ring terminal", terminals, "one for each end at a battery or at the body");
        Count(
            kit, KitPartKind.Grommet, "bulkhead grommet", needs.Grommets.Count,
            "one for each cable that passes a metal wall from the engine bay");
        Blocks(kit);
        Length(kit, KitPartKind.Loom, "split loom", needs.LoomMetres, "for what lies in the engine bay");
        double signal = ruleset.Kit.SignalLength.Value;
        Length(kit, KitPartKind.TurnOnLead, "turn-on lead", signal, "from the dashboard to the amplifier");
        Interconnects(kit, signal);
        string[] small = [.. Small(kit)];
        if (small.Length > 0)
            issues.Add(
                KitVerdict.Serves, KitCodes.SundriesMissing, Severity.Info, "/kit/parts",
                $"The kit has no {string.Join(" and no ", small)}.", $"buy {string.Join(" and ", small)} beside it", "0 < 1");
    }

    private static IEnumerable<string> Small(Kit kit)
    {
        if (Held(kit, KitPartKind.HeatShrink) == 0) yield return "heat-shrink";
        if (Held(kit, KitPartKind.Ties) == 0) yield return "ties";
    }

    private static int Held(Kit kit, KitPartKind kind) => kit.Parts.Where(part => part.Kind == kind).Sum(part => part.Count);

    private void Count(Kit kit, KitPartKind kind, string what, int needed, string why)
    {
        int holds = Held(kit, kind);
        if (holds < needed) issues.AddCount(what, holds, needed, why);
    }

    private void Blocks(Kit kit)
    {
        List<KitPart> held = [.. kit.Parts.Where(part => part.Kind is KitPartKind.DistributionBlock)
            .SelectMany(part => Enumerable.Repeat(part, part.Count)).OrderBy(part => part.Ways ?? int.MaxValue)];
        foreach (BlockNeed need in needs.Blocks.OrderBy(need => need.Ways))
        {
            int fits = held.FindIndex(part => part.Ways is not { } ways || ways >= need.Ways);
            if (fits >= 0) held.RemoveAt(fits);
            else issues.AddCount($"distribution block with {need.Ways} ways", 0, 1, $"\"{need.Place}\" is one");
        }
    }

    private void Interconnects(Kit kit, double signal)
    {
        int holds = Held(kit, KitPartKind.SignalInterconnect);
        if (holds < needs.Amplifiers)
            issues.AddCount("signal interconnect", holds, needs.Amplifiers, "one for each amplifier");
        else
            Length(kit, KitPartKind.SignalInterconnect, "signal interconnect", signal, "from the dashboard to the amplifier");
    }

    /// <summary>A part of unstated length is taken to be long enough.</summary>
    private void Length(Kit kit, KitPartKind kind, string what, double needed, string why)
    {
        if (needed <= 0) return;
        KitPart[] held = [.. kit.Parts.Where(part => part.Kind == kind)];
        if (held.Length == 0)
        {
            issues.AddCount(what, 0, 1, $"{phrase.Length(needed)} {why}");
            return;
        }

        if (held.Any(part => part.LengthMetres is null)) return;
        double metres = kind is KitPartKind.Loom
            ? held.Sum(part => part.LengthMetres!.Value * part.Count)
            : held.Max(part => part.LengthMetres!.Value);
        if (!Significant.Exceeds(needed, metres)) return;
        issues.Add(
            KitVerdict.ServesWithChange, KitCodes.PartShort, Severity.Caution, "/kit/parts",
            $"The kit's {what} is {phrase.Length(metres)} long, and {phrase.Length(needed)} is needed {why}.",
            $"{phrase.Length(needed)} of {what}", $"{Phrase.Number(metres)} m < {Phrase.Number(needed)} m",
            metres, needed, "m");
    }
}
