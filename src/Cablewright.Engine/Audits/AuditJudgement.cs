using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Audits;

/// <summary>Holds what was found against the label.</summary>
internal sealed class AuditJudgement
{
    public AuditJudgement(BenchReport report, MetalReading metal, Ruleset ruleset)
    {
        Metal = MetalOf(report, metal);
        if (report.ClaimedSize is { } size)
        {
            LimitMm2 = TrueSize.LeastAreaOf(size, ruleset);
            double claimed = size.NominalAreaMm2;
            Interval area = metal.AreaMm2;
            Shortfall = new Interval(1 - area.Estimate / claimed, 1 - area.Most / claimed, 1 - area.Least / claimed);
            Size = Significant.Exceeds(LimitMm2, area.Most) ? ClaimCheck.Broken
                : Significant.Exceeds(LimitMm2, area.Least) ? ClaimCheck.Open
                : ClaimCheck.Kept;
        }

        Verdict = report.ClaimedSize is null && report.ClaimedMaterial is null ? null
            : Metal is ClaimCheck.Broken ? AuditVerdict.OtherMetal
            : Size is ClaimCheck.Broken ? AuditVerdict.Undersized
            : Size is ClaimCheck.Open || Metal is ClaimCheck.Open ? AuditVerdict.CannotBeTold
            : AuditVerdict.TrueToClaim;
    }

    /// <summary>The least area that the label allows, in mm².</summary>
    public double LimitMm2 { get; }

    /// <summary>Shortfall against the label's nominal area, as a fraction of it; bounds may be negative.</summary>
    public Interval? Shortfall { get; }

    /// <summary>Whether the size is there.</summary>
    public ClaimCheck Size { get; }

    /// <summary>Whether the metal is.</summary>
    public ClaimCheck Metal { get; }

    public AuditVerdict? Verdict { get; }

    /// <summary>
    /// A metal that cannot be is another only where some metal can be; else the measurements contradict each other. Bare and
    /// tinned copper stand for each other, since no bench tells them apart with certainty.
    /// </summary>
    private static ClaimCheck MetalOf(BenchReport report, MetalReading metal)
    {
        if (report.ClaimedMaterial is not { } claimed) return metal.IsConsistent ? ClaimCheck.None : ClaimCheck.Open;
        if (!metal.IsTested || !metal.IsConsistent) return ClaimCheck.Open;
        bool isCopper = MetalRange.Of(claimed).IsCopper;
        if (!(isCopper ? metal.CanBeCopper is true : metal.IsPossible(claimed))) return ClaimCheck.Broken;
        bool others = metal.Candidates.Any(
            candidate => candidate.IsPossible && candidate.Material != claimed
                && !(isCopper && MetalRange.Of(candidate.Material).IsCopper));
        return others ? ClaimCheck.Open : ClaimCheck.Kept;
    }
}

/// <summary>What became of one part of a claim.</summary>
internal enum ClaimCheck
{
    None,
    Kept,
    Open,
    Broken,
}
