using Cablewright.Engine.Conductors;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Sizing;

/// <summary>
/// A choice in which every open run loses about as much on each metre: rough, but near the least metal, and cheap to find.
/// </summary>
/// <remarks>
/// For one load over runs in series, equal volts per metre are the least metal for a given loss where the candidates lie close.
/// The volts per metre are found by halving; with less of them every run is at least as strong.
/// </remarks>
internal sealed class EvenLoss(SizingTask task, bool isUsual, IReadOnlyList<ConductorChoice>[] candidates)
{
    private const int Halvings = 12;

    /// <summary>Tries ever more even loss, from a choice that keeps the goal.</summary>
    /// <param name="trials">Works each choice out; its best tells the currents.</param>
    public void Run(Trials trials)
    {
        if (trials.Best is not { } strong) return;
        double none = 0, all = task.Open.Max(run => LostPerMetre(run, candidates[run][0], strong.Evaluation));
        for (int i = 0; i < Halvings && !task.IsOutOfWork; i++)
        {
            double middle = (none + all) / 2;
            if (trials.Try(At(middle, strong.Evaluation)).IsKept) none = middle;
            else all = middle;
        }
    }

    private ConductorChoice[] At(double voltsPerMetre, DesignEvaluation strong)
    {
        ConductorChoice[] conductors = [.. strong.Design.Conductors];
        foreach (int run in task.Open) conductors[run] = Lightest(run, voltsPerMetre, strong);
        if (isUsual) GroundRule.Keep(conductors, task.SupplyOf);
        return conductors;
    }

    private ConductorChoice Lightest(int run, double voltsPerMetre, DesignEvaluation strong)
    {
        ConductorChoice best = candidates[run][^1];
        foreach (ConductorChoice choice in candidates[run])
        {
            if (LostPerMetre(run, choice, strong) > voltsPerMetre
                || Significant.Exceeds(strong.Envelope.ThermalAmps[run], task.Model.Ampacities.OfAll(run, choice))) continue;
            if (Significant.Exceeds(task.WeightOf(run, best), task.WeightOf(run, choice))) best = choice;
        }

        return best;
    }

    private static double LostPerMetre(int run, ConductorChoice choice, DesignEvaluation strong) =>
        strong.Envelope.PeakAmps[run] * choice.OhmsPerMetreAt20;
}
