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
internal sealed class KitSundries(KitIssues issues, Speech speech, BillOfMaterials needs, Ruleset ruleset)
{
    public void Check(Kit kit)
    {
        Count(kit, KitPartKind.RingTerminal, needs.RingTerminals);
        Count(kit, KitPartKind.Grommet, needs.Grommets.Count);
        Blocks(kit);
        Length(kit, KitPartKind.Loom, needs.LoomMetres);
        double signal = ruleset.Kit.SignalLength.Value;
        Length(kit, KitPartKind.TurnOnLead, signal);
        Interconnects(kit, signal);
        KitPartKind[] small = [.. new[] { KitPartKind.HeatShrink, KitPartKind.Ties }.Where(kind => Held(kit, kind) == 0)];
        if (small.Length == 0) return;
        string key = $"{KitCodes.SundriesMissing}.{string.Join('-', small.Select(kind => Keys.Of(kind)))}";
        issues.Add(
            KitVerdict.Serves, KitCodes.SundriesMissing, Severity.Info, "/kit/parts", speech.Say("finding." + key, []),
            speech.Text("remedy." + key, []), "0 < 1");
    }

    private static int Held(Kit kit, KitPartKind kind) => kit.Parts.Where(part => part.Kind == kind).Sum(part => part.Count);

    private void Count(Kit kit, KitPartKind kind, int needed)
    {
        int holds = Held(kit, kind);
        if (holds < needed) TooFew(kind, holds, needed, []);
    }

    private void TooFew(KitPartKind kind, int holds, int needed, Params others)
    {
        Params values = new Params { ["holds"] = holds, ["needed"] = needed }.And(others);
        issues.AddCount(
            holds, needed,
            speech.Say($"finding.{KitCodes.PartMissing}.{Keys.Of(kind)}{(holds == 0 ? "" : ".few")}", values),
            speech.Text("remedy.kit.part-missing", new Params
            {
                ["more"] = needed - holds,
                ["part"] = speech.Text($"part.{Keys.Of(kind)}{(others.ContainsKey("ways") ? ".ways" : "")}", values),
            }));
    }

    private void Blocks(Kit kit)
    {
        List<KitPart> held = [.. kit.Parts.Where(part => part.Kind is KitPartKind.DistributionBlock)
            .SelectMany(part => Enumerable.Repeat(part, part.Count)).OrderBy(part => part.Ways ?? int.MaxValue)];
        foreach (BlockNeed need in needs.Blocks.OrderBy(need => need.Ways))
        {
            int fits = held.FindIndex(part => part.Ways is not { } ways || ways >= need.Ways);
            if (fits >= 0) held.RemoveAt(fits);
            else
                TooFew(KitPartKind.DistributionBlock, 0, 1, new Params { ["ways"] = need.Ways, ["place"] = need.Place });
        }
    }

    private void Interconnects(Kit kit, double signal)
    {
        int holds = Held(kit, KitPartKind.SignalInterconnect);
        if (holds < needs.Amplifiers) TooFew(KitPartKind.SignalInterconnect, holds, needs.Amplifiers, []);
        else Length(kit, KitPartKind.SignalInterconnect, signal);
    }

    /// <summary>A part of unstated length is taken to be long enough.</summary>
    private void Length(Kit kit, KitPartKind kind, double needed)
    {
        if (needed <= 0) return;
        KitPart[] held = [.. kit.Parts.Where(part => part.Kind == kind)];
        if (held.Length == 0)
        {
            TooFew(kind, 0, 1, new Params { ["metres"] = needed });
            return;
        }

        if (held.Any(part => part.LengthMetres is null)) return;
        double metres = kind is KitPartKind.Loom
            ? held.Sum(part => part.LengthMetres!.Value * part.Count)
            : held.Max(part => part.LengthMetres!.Value);
        if (!Significant.Exceeds(needed, metres)) return;
        Params values = new() { ["metres"] = metres, ["neededMetres"] = needed };
        string part = speech.Text("part." + Keys.Of(kind), []);
        issues.Add(
            KitVerdict.ServesWithChange, KitCodes.PartShort, Severity.Caution, "/kit/parts",
            speech.Say($"finding.{KitCodes.PartShort}.{Keys.Of(kind)}", values),
            speech.Text("remedy.kit.part-short", values.And(new Params { ["part"] = part })),
            $"{Phrase.Number(metres)} m < {Phrase.Number(needed)} m",
            metres, needed, "m");
    }
}
