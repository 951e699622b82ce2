using Cablewright.Engine.Kits;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Kits;

/// <summary>Everything of a kit but its cables and fuses, against what the job needs.</summary>
/// <remarks>What such a job takes is common practice without a source, but for the grommet (one for each metal wall
/// pierced).</remarks>
internal sealed class KitSundries(KitIssues issues, Speech speech, Phrase phrase, BillOfMaterials needs, Ruleset ruleset)
{
    public void Check(Kit kit)
    {
        int terminals = needs.Pieces.Where(piece => !piece.IsVehicles).Sum(piece => piece.RingTerminals);
        Count(kit, KitPartKind.RingTerminal, "ring terminal", terminals);
        Count(kit, KitPartKind.Grommet, "bulkhead grommet", needs.Grommets.Count);
        Blocks(kit);
        Length(kit, KitPartKind.Loom, "split loom", needs.LoomMetres);
        double signal = ruleset.Kit.SignalLength.Value;
        Length(kit, KitPartKind.TurnOnLead, "turn-on lead", signal);
        Interconnects(kit, signal);
        string[] small = [.. Small(kit)];
        if (small.Length > 0)
            issues.Add(
                KitVerdict.Serves, KitCodes.SundriesMissing, Severity.Info, "/kit/parts",
                speech.Say($"finding.{KitCodes.SundriesMissing}.{string.Join('-', small)}", []),
                $"buy {string.Join(" and ", small)} beside it", "0 < 1");
    }

    private static IEnumerable<string> Small(Kit kit)
    {
        if (Held(kit, KitPartKind.HeatShrink) == 0) yield return "heat-shrink";
        if (Held(kit, KitPartKind.Ties) == 0) yield return "ties";
    }

    private static int Held(Kit kit, KitPartKind kind) => kit.Parts.Where(part => part.Kind == kind).Sum(part => part.Count);

    private void Count(Kit kit, KitPartKind kind, string what, int needed)
    {
        int holds = Held(kit, kind);
        if (holds < needed) issues.AddCount(what, holds, needed, TooFew(kind, holds, needed, []));
    }

    private Message TooFew(KitPartKind kind, int holds, int needed, Params others) => speech.Say(
        $"finding.{KitCodes.PartMissing}.{Keys.Of(kind)}{(holds == 0 ? "" : ".few")}",
        new Params { ["holds"] = holds, ["needed"] = needed }.And(others));

    private void Blocks(Kit kit)
    {
        List<KitPart> held = [.. kit.Parts.Where(part => part.Kind is KitPartKind.DistributionBlock)
            .SelectMany(part => Enumerable.Repeat(part, part.Count)).OrderBy(part => part.Ways ?? int.MaxValue)];
        foreach (BlockNeed need in needs.Blocks.OrderBy(need => need.Ways))
        {
            int fits = held.FindIndex(part => part.Ways is not { } ways || ways >= need.Ways);
            if (fits >= 0) held.RemoveAt(fits);
            else
                issues.AddCount($"distribution block with {need.Ways} ways", 0, 1, TooFew(
                    KitPartKind.DistributionBlock, 0, 1, new Params { ["ways"] = need.Ways, ["place"] = need.Place }));
        }
    }

    private void Interconnects(Kit kit, double signal)
    {
        int holds = Held(kit, KitPartKind.SignalInterconnect);
        if (holds < needs.Amplifiers)
            issues.AddCount(
                "signal interconnect", holds, needs.Amplifiers,
                TooFew(KitPartKind.SignalInterconnect, holds, needs.Amplifiers, []));
        else
            Length(kit, KitPartKind.SignalInterconnect, "signal interconnect", signal);
    }

    /// <summary>A part of unstated length is taken to be long enough.</summary>
    private void Length(Kit kit, KitPartKind kind, string what, double needed)
    {
        if (needed <= 0) return;
        KitPart[] held = [.. kit.Parts.Where(part => part.Kind == kind)];
        if (held.Length == 0)
        {
            issues.AddCount(what, 0, 1, TooFew(kind, 0, 1, new Params { ["metres"] = needed }));
            return;
        }

        if (held.Any(part => part.LengthMetres is null)) return;
        double metres = kind is KitPartKind.Loom
            ? held.Sum(part => part.LengthMetres!.Value * part.Count)
            : held.Max(part => part.LengthMetres!.Value);
        if (!Significant.Exceeds(needed, metres)) return;
        issues.Add(
            KitVerdict.ServesWithChange, KitCodes.PartShort, Severity.Caution, "/kit/parts",
            speech.Say(
                $"finding.{KitCodes.PartShort}.{Keys.Of(kind)}",
                new Params { ["metres"] = metres, ["neededMetres"] = needed }),
            $"{phrase.Length(needed)} of {what}", $"{Phrase.Number(metres)} m < {Phrase.Number(needed)} m",
            metres, needed, "m");
    }
}
