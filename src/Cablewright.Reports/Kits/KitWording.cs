using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Kits;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Findings;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Kits;

/// <summary>Puts what is wrong with a kit's cables and fuses into words.</summary>
internal sealed class KitWording(KitIssues issues, Speech speech, BillOfMaterials needs)
{
    private static readonly FigureOf Bears = rules => rules.Kit.WireBears;

    public void BuildFails(Variant baseline, Violation anyway)
    {
        Finding finding = Worded(baseline, anyway);
        issues.Add(
            KitVerdict.DoesNotServe, KitCodes.BuildFails, Severity.Fail, "/build",
            SayOf(finding, KitCodes.BuildFails, []), finding.Remedy, finding.Workings, rule: Bears);
    }

    /// <summary>Cables that are not there, hold less than they say, or cannot be told apart.</summary>
    public void Wires(IReadOnlyList<KitWire> power, IReadOnlyList<KitWire> ground, bool needsPower, bool needsGround)
    {
        if (power.Count == 0 && needsPower) Missing(".power-wire", Vocabulary.Side.Supply, KitVerdict.DoesNotServe);
        if (ground.Count == 0 && needsGround) Missing(".ground-wire", Vocabulary.Side.Return, KitVerdict.ServesWithChange);
        foreach (KitWire wire in power.Concat(ground).Where(wire => wire.IsBelowLabel)) BelowLabel(wire);
        foreach (KitWire supply in power)
        {
            string? colour = supply.Part.Colour?.Trim();
            if (ground.FirstOrDefault(back => Alike(back.Part.Colour?.Trim(), colour)) is not { } same) continue;
            issues.Add(
                KitVerdict.Serves, KitCodes.SameColour, Severity.Caution, $"/kit/parts/{same.Index}/colour",
                Say(KitCodes.SameColour, new Params { ["colour"] = colour! }),
                Remedy(KitCodes.SameColour, []),
                $"\"{colour}\" = \"{same.Part.Colour}\"", rule: rules => rules.Kit.ColoursDiffer);
            return;
        }
    }

    public void Shortages(WirePlan plan, KitVerdict verdict)
    {
        foreach (WireShortage shortage in plan.Shortages)
        {
            WirePiece piece = shortage.Piece;
            double needed = shortage.IsHard ? piece.Run.Run.LengthMetres : piece.CutMetres;
            issues.Add(
                shortage.IsHard ? verdict : KitVerdict.Serves,
                shortage.IsHard ? KitCodes.PartShort : KitCodes.CutTight,
                shortage.IsHard ? Severity.Fail : Severity.Caution,
                $"/kit/parts/{shortage.Wire.Index}/length",
                Say(shortage.IsHard ? KitCodes.PartShort : KitCodes.CutTight, new Params
                {
                    ["run"] = piece.Run.Id,
                    ["neededMetres"] = needed,
                    ["leftMetres"] = shortage.LeftMetres,
                    ["size"] = shortage.Wire.Part.Size!.Label,
                }),
                Remedy(KitCodes.CutTight, new Params
                {
                    ["cutMetres"] = piece.CutMetres,
                    ["conductor"] = shortage.Wire.Conductor.ToString(),
                }),
                $"{Phrase.Number(shortage.LeftMetres)} m < {Phrase.Number(needed)} m",
                shortage.LeftMetres, needed, "m",
                rules => shortage.IsHard ? rules.Kit.Complete : rules.Materials.CutAllowance);
        }
    }

    /// <summary>What fails with the kit's cables, at the cable of the run it is about or at the first.</summary>
    public void Thin(WirePlan plan, Violation worst, Variant trial, Variant chosen, KitVerdict verdict)
    {
        Finding finding = Worded(trial, worst);
        string id = WiredRun(plan, worst, trial);
        KitWire wire = plan.ByRun[id];
        Conductor enough = chosen.Runs.First(result => result.Id == id).Choice.Conductor;
        issues.Add(
            verdict, KitCodes.WireThin, Severity.Fail, $"/kit/parts/{wire.Index}/size",
            SayOf(finding, KitCodes.WireThin, new Params { ["kitConductor"] = wire.Conductor.ToString() }),
            Remedy(KitCodes.WireThin, Conductor(enough).And(new Params { ["run"] = id })),
            $"{finding.Code}: {finding.Workings}", finding.Measured, finding.Limit, finding.Unit, Bears);
    }

    /// <summary>What fails with the kit's cables by an assumption alone, and what would have to be stated.</summary>
    public void ServesIf(WirePlan plan, Violation worst, Variant trial, IReadOnlyList<Member> unstated, Ruleset ruleset)
    {
        Finding finding = Worded(trial, worst);
        KitWire wire = plan.ByRun[WiredRun(plan, worst, trial)];
        Params values = new() { ["celsius"] = ruleset.Kit.GoodInsulation.Value };
        string conditions = string.Join(
            speech.Text("change.and", []), unstated.Select(member => speech.Text("condition." + Keys.Of(member), values)));
        issues.Add(
            KitVerdict.ServesWithChange, KitCodes.ServesIf, Severity.Caution, $"/kit/parts/{wire.Index}/size",
            SayOf(finding, KitCodes.ServesIf, new Params
            {
                ["kitConductor"] = wire.Conductor.ToString(),
                ["conditions"] = conditions,
            }.And(values)),
            finding.Remedy, $"{finding.Code}: {finding.Workings}", finding.Measured, finding.Limit, finding.Unit, Bears);
    }

    /// <summary>Cable that is larger than a terminal usually accepts.</summary>
    public void Thick(Variant trial, IReadOnlyList<Violation> thick)
    {
        if (thick.Count == 0) return;
        Finding finding = new FindingWriter(trial).Write(thick)[0];
        issues.Add(
            KitVerdict.Serves, KitCodes.WireThick, Severity.Info, "/kit/parts", SayOf(finding, KitCodes.WireThick, []),
            finding.Remedy, $"{finding.Code}: {finding.Workings}", finding.Measured, finding.Limit, finding.Unit, Bears);
    }

    private static string WiredRun(WirePlan plan, Violation worst, Variant trial) =>
        RunOf(worst, trial) is { } run && plan.ByRun.ContainsKey(run) ? run : plan.ByRun.Keys.First();

    /// <summary>Of all that wants a look, what hangs on the cables; fuses are judged by themselves.</summary>
    public void Marginal(Variant trial, IReadOnlyList<Violation> cautions)
    {
        foreach (Finding caution in cautions.Select(caution => Worded(trial, caution))
            .Where(caution => !caution.Code.StartsWith("fuse.", StringComparison.Ordinal)))
            issues.Add(
                KitVerdict.Serves, KitCodes.WireMarginal, Severity.Caution, "/kit/parts",
                SayOf(caution, KitCodes.WireMarginal, []), caution.Remedy, $"{caution.Code}: {caution.Workings}",
                caution.Measured, caution.Limit, caution.Unit, Bears);
    }

    public void FusesMissing(FusePick pick)
    {
        foreach ((RunEnd end, DesignedRun run, FittedFuse chosen) in pick.Missing)
            issues.Add(
                KitVerdict.ServesWithChange, KitCodes.PartMissing, Severity.Fail, "/kit/parts",
                Say(
                    KitCodes.PartMissing,
                    new Params { ["run"] = run.Id, ["place"] = end.IsFar ? run.Run.To : run.Run.From }, ".fuse"),
                Remedy(
                    KitCodes.PartMissing,
                    Fuse(chosen).And(new Params { ["size"] = run.Choice.Conductor.Size.Label }), ".fuse"),
                "0 < 1", 0, 1, "1");
    }

    public void FusesWrong(FusePick pick, IReadOnlyList<Violation> fails, Variant fused, Variant wired)
    {
        foreach (Violation fail in fails)
        {
            Finding finding = Worded(fused, fail);
            string? run = RunOf(fail, fused);
            RunEnd slot = pick.PartOf.Keys.FirstOrDefault(end => wired.Runs[end.Run].Id == run, pick.PartOf.Keys.First());
            FittedFuse right = wired.Sized.Evaluation.Design.FuseAt(slot)!;
            issues.Add(
                KitVerdict.ServesWithChange, KitCodes.FuseWrong, Severity.Fail,
                $"/kit/parts/{pick.PartOf[slot]}/rating",
                SayOf(
                    finding, KitCodes.FuseWrong, new Params { ["kitFuseAmps"] = pick.BySlot[slot].RatingAmps!.Value }),
                Remedy(KitCodes.FuseWrong, Fuse(right)),
                $"{finding.Code}: {finding.Workings}", finding.Measured, finding.Limit, finding.Unit, Bears);
        }
    }

    public string Summary(Kit kit)
    {
        string verdict = speech.Text("summary.kit." + issues.Verdict.Word(), new Params { ["kit"] = kit.Name });
        return issues.Findings is [var worst, ..] && worst.Severity is not Severity.Info
            ? $"{verdict} {worst.Message}"
            : verdict;
    }

    private static bool Alike(string? one, string? other) =>
        one is { Length: > 0 } && string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private void Missing(string variant, Vocabulary.Side side, KitVerdict verdict)
    {
        double metres = needs.Pieces.Where(piece => piece.Run.Run.Side == side && !piece.IsVehicles)
            .Sum(piece => piece.CutMetres * piece.Run.Choice.Count);
        Conductor enough =
            needs.Pieces.First(piece => piece.Run.Run.Side == side && !piece.IsVehicles).Run.Choice.Conductor;
        issues.Add(
            verdict, KitCodes.PartMissing, Severity.Fail, "/kit/parts",
            Say(KitCodes.PartMissing, new Params { ["metres"] = metres }, variant),
            Remedy(KitCodes.PartMissing, Conductor(enough).And(new Params { ["metres"] = metres }), ".wire"),
            $"0 m < {Phrase.Number(metres)} m", 0, metres, "m");
    }

    private void BelowLabel(KitWire wire)
    {
        Params values = new()
        {
            ["size"] = wire.Part.Size!.Label,
            ["strandsMm2"] = wire.StrandsMm2!.Value,
            ["labelMm2"] = wire.LabelMm2,
            ["triedSize"] = wire.Conductor.Size.Label,
        };
        issues.Add(
            KitVerdict.Serves, KitCodes.WireBelowLabel, Severity.Caution, $"/kit/parts/{wire.Index}/size",
            Say(KitCodes.WireBelowLabel, values), Remedy(KitCodes.WireBelowLabel, values),
            $"{wire.Part.StrandCount} x pi x ({Phrase.Number(wire.Part.StrandMetres!.Value * 1000)} mm)^2 / 4 = "
            + $"{Phrase.Number(wire.StrandsMm2.Value)} mm2 < {Phrase.Number(wire.LabelMm2)} mm2",
            wire.StrandsMm2, wire.LabelMm2, "mm2", rules => rules.Audit.LeastOfClaim);
    }

    private static Params Conductor(Conductor conductor) =>
        new() { ["size"] = conductor.Size.Label, ["material"] = conductor.Material.InText() };

    private static Params Fuse(FittedFuse fuse) =>
        new() { ["family"] = fuse.Family.Name.Word(), ["ratingAmps"] = fuse.RatingAmps };

    private string Remedy(string code, Params values, string variant = "") => speech.Text($"remedy.{code}{variant}", values);

    private Message Say(string code, Params values, string variant = "") => speech.Say($"finding.{code}{variant}", values);

    private Message SayOf(Finding finding, string code, Params values) => speech.SayOf(
        new Message(finding.Message, (Params?)finding.Params ?? []), "finding." + code, values);

    private static Finding Worded(Variant variant, Violation violation) => new FindingWriter(variant).Write(violation);

    /// <summary>The run that a violation is about, where it is about one.</summary>
    private static string? RunOf(Violation violation, Variant variant) =>
        RuleBook.Of(violation.Kind).IsOfRun ? variant.Build.Runs[violation.Index].Id : null;
}
