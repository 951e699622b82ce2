using Cablewright.Engine.Builds;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Network;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Protection;
using Cablewright.Engine.Rules;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.ShortCircuits;

/// <remarks>
/// In a fault downstream of a fuse, every other fuse that carries it and does not protect the same run should hold longer.
/// </remarks>
internal sealed class NotSelective() : FaultRule(
    ViolationKind.NotSelective, Severity.Info, "fuse.not-selective", rules => rules.Fuse.Coordination,
    "In a short circuit the fuse before may open first.")
{
    /// <inheritdoc/>
    public override Violation? Check(FaultFacts facts, RunEnd end, FittedFuse fuse)
    {
        for (int battery = 0; battery < facts.Build.Batteries.Count; battery++)
        {
            FaultCircuit.Fault fault = facts.SmallestAt(end.Other, battery);
            double totalRating = facts.Evaluation.Design.TotalRatingAmpsAt(end);
            double own = Math.Abs(fault.BranchAmps(end.Run));
            if (fuse.Band.SlowestSeconds(own / totalRating) is not { } slowest) continue;
            foreach (ProtectiveDevice upstream in facts.Fuses)
            {
                double carried = upstream.Run == end.Run ? 0 : Math.Abs(fault.BranchAmps(upstream.Run));
                if (carried <= Clearings.PartInFault * own) continue;
                double fastest = upstream.Fuse.Band.FastestSeconds(carried / upstream.TotalRatingAmps);
                if (Significant.Exceeds(slowest, fastest)) return At(end, slowest, fastest) with { Other = upstream.Run };
            }
        }

        return null;
    }
}
