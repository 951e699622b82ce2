using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Wiring;

namespace Cablewright.Engine.Sizing;

/// <summary>What each candidate of each run would lose where the currents are those of a circuit at hand.</summary>
/// <remarks>
/// <para>A run's candidate has the resistance that the run has now, and what its conductor and its fuse differ by. A conductor's
/// rise above the air goes with the square of what it carries of its ampacity.</para>
/// <para>Whatever else is lost on the way to an amplifier counts as it is now: given runs, the body, the fall of a diode.</para>
/// </remarks>
internal sealed class HeuristicNumbers
{
    private readonly SizingTask task;
    private readonly Goal goal;
    private readonly ChoiceRules rules;
    private readonly Design design;
    private readonly OperatingEnvelope envelope;
    private readonly FuseBounds fuses;
    private readonly FuseBounds before;
    private readonly double[] full;
    private readonly bool hasFuses;

    /// <summary>Takes the currents.</summary>
    /// <param name="task">The task.</param>
    /// <param name="goal">The goal.</param>
    /// <param name="rules">The rules to keep.</param>
    /// <param name="design">What the circuit at hand is made of.</param>
    /// <param name="envelope">Its currents.</param>
    /// <param name="hasFuses">Whether the fuses are known and have their part in those.</param>
    /// <param name="settled">The conductors by which it is told where else fuses stand.</param>
    public HeuristicNumbers(SizingTask task, Goal goal, ChoiceRules rules, Design design, OperatingEnvelope envelope,
        bool hasFuses, ConductorChoice[] settled)
    {
        this.hasFuses = hasFuses;
        this.task = task;
        this.goal = goal;
        this.rules = rules;
        this.design = design;
        this.envelope = envelope;
        full = [.. envelope.PeakAmps.Select((amps, run) => Math.Max(amps, envelope.ThermalAmps[run]))];
        before = FusesBeside(design.Conductors);
        fuses = ReferenceEquals(settled, design.Conductors) ? before : FusesBeside(settled);
    }

    private FuseBounds FusesBeside(ConductorChoice[] conductors)
    {
        var bounds = new FuseBounds(task.Model, task.Evaluator.FuseLadders, goal.MostParallel, rules);
        bounds.Take(
            [.. full.Select((amps, run) =>
                new RunAmps(0, envelope.ThermalAmps[run], amps, envelope.PeakAmps[run], amps))],
            [.. conductors.Select((choice, run) => task.Model.Ampacities.Of(run, choice.Conductor).LimitAmps)],
            conductors);
        return bounds;
    }

    /// <summary>Whether a candidate carries what its run carries, and can be protected.</summary>
    public bool CanBear(int run, ConductorChoice choice) => fuses.CanBear(
        run, choice, task.RequiredAmps(run, goal, envelope.ThermalAmps[run], envelope.PeakAmps[run]),
        envelope.ThermalAmps[run]);

    /// <summary>What a run would lose with a candidate.</summary>
    public double Volts(int run, ConductorChoice choice)
    {
        ConductorChoice now = design.Conductors[run];
        double known = envelope.Ohms[run];
        double fuse = FuseOhms(run, choice);
        double ohms = choice == now && hasFuses && fuse == before.LikelyOhms(run, now)
            ? known
            : known + Ohms(run, choice) - Ohms(run, now) + fuse - design.FuseOhms(run);
        return envelope.PeakAmps[run] * Math.Max(ohms, 0);
    }

    /// <summary>What may be lost in the open runs on an amplifier's way where it keeps a loss in all.</summary>
    public double LimitOf(int load, int[] way, double volts)
    {
        double other = task.Model.Circuit.LostVolts(load, envelope);
        foreach (int branch in way)
        {
            if (branch >= full.Length) continue;
            if (task.Build.Runs[branch].Given is null) other -= envelope.PeakAmps[branch] * envelope.Ohms[branch];
            else if (!hasFuses) other += envelope.PeakAmps[branch] * FuseOhms(branch, design.Conductors[branch]);
        }

        return volts - other;
    }

    private double FuseOhms(int run, ConductorChoice choice) => fuses.LikelyOhms(run, choice);

    private double Ohms(int run, ConductorChoice choice)
    {
        CompleteRun described = task.Build.Runs[run];
        ConductorChoice now = design.Conductors[run];
        double rise = Math.Max(0, envelope.Celsius[run] - described.AirCelsius);
        double ampacity = task.Model.Ampacities.OfAll(run, choice);
        double ratio = ampacity > 0 ? task.Model.Ampacities.OfAll(run, now) / ampacity : 1;
        return choice.Conductor.OhmsPerMetre(described.MeanAirCelsius
            + rise * ratio * ratio) * described.LengthMetres / choice.Count;
    }
}
