using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Sizing;

/// <summary>What each candidate of each run would lose where the currents are those of a circuit at hand.</summary>
/// <remarks>
/// <para>A run's candidate has the resistance that the run has now, and what its conductor and its fuse differ by. A conductor's
/// rise above the air goes with the square of what it carries of its ampacity.</para>
/// <para>Whatever else is lost on the way to an amplifier counts as it is now: given runs, the body, the fall of a diode.</para>
/// </remarks>
internal sealed class DraftNumbers
{
    private readonly SizingTask task;
    private readonly ChoiceRules rules;
    private readonly Decision decision;
    private readonly WorstCurrents currents;
    private readonly FuseFloors fuses;
    private readonly double[] full;
    private readonly bool hasFuses;

    /// <summary>Takes the currents.</summary>
    /// <param name="task">The task.</param>
    /// <param name="goal">The goal.</param>
    /// <param name="rules">The rules to keep.</param>
    /// <param name="decision">What the circuit at hand is made of.</param>
    /// <param name="currents">Its currents.</param>
    /// <param name="hasFuses">Whether the fuses are known and have their part in those.</param>
    public DraftNumbers(SizingTask task, Goal goal, ChoiceRules rules, Decision decision, WorstCurrents currents, bool hasFuses)
    {
        this.hasFuses = hasFuses;
        this.task = task;
        this.rules = rules;
        this.decision = decision;
        this.currents = currents;
        fuses = new FuseFloors(task.Build, task.Evaluator.Shape, task.Evaluator.Ampacities, goal.MostParallel, rules);
        full = [.. currents.PeakAmps.Select((amps, run) => Math.Max(amps, currents.ThermalAmps[run]))];
        fuses.Take(
            [.. full.Select((amps, run) => new RunAmps(0, currents.ThermalAmps[run], amps, amps, amps, 0))],
            [.. decision.Conductors.Select((choice, run) => task.Evaluator.Ampacities.Of(run, choice.Conductor).LimitAmps)],
            decision.Conductors);
    }

    /// <summary>Whether a candidate bears what its run carries, and can be guarded.</summary>
    public bool CanBear(int run, ConductorChoice choice)
    {
        double bearing = task.Evaluator.Ampacities.OfAll(run, choice);
        return bearing <= 0
            || ((rules.AcceptsHeatOf(run) || !Significant.Exceeds(currents.ThermalAmps[run], bearing))
                && (rules.AcceptsFuseOf(run) || fuses.CanGuard(run, choice, currents.ThermalAmps[run])));
    }

    /// <summary>What a run would lose with a candidate.</summary>
    public double Volts(int run, ConductorChoice choice)
    {
        ConductorChoice now = decision.Conductors[run];
        double known = currents.Ohms[run];
        double ohms = choice == now && hasFuses
            ? known
            : known + Ohms(run, choice) - Ohms(run, now) + FuseOhms(run, choice) - decision.FuseOhms(run);
        return currents.PeakAmps[run] * Math.Max(ohms, 0);
    }

    /// <summary>What may be lost in the open runs on an amplifier's way where it keeps a loss in all.</summary>
    public double LimitOf(int load, int[] way, double volts)
    {
        double other = task.Evaluator.Wiring.LostVolts(load, currents);
        foreach (int branch in way)
        {
            if (branch >= full.Length) continue;
            if (task.Build.Runs[branch].Given is null) other -= currents.PeakAmps[branch] * currents.Ohms[branch];
            else if (!hasFuses) other += currents.PeakAmps[branch] * FuseOhms(branch, decision.Conductors[branch]);
        }

        return volts - other;
    }

    private double FuseOhms(int run, ConductorChoice choice) => fuses.LikelyOhms(run, choice);

    private double Ohms(int run, ConductorChoice choice)
    {
        CompleteRun described = task.Build.Runs[run];
        ConductorChoice now = decision.Conductors[run];
        double rise = Math.Max(0, currents.Celsius[run] - described.AirCelsius);
        double bearing = task.Evaluator.Ampacities.OfAll(run, choice);
        double ratio = bearing > 0 ? task.Evaluator.Ampacities.OfAll(run, now) / bearing : 1;
        return choice.Conductor.OhmsPerMetre(described.AirCelsius + rise * ratio * ratio) * described.LengthMetres / choice.Count;
    }
}
