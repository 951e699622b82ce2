using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Heat;

namespace Cablewright.Engine.Sizing;

/// <summary>The least currents of a run in any choice that keeps a goal.</summary>
/// <param name="Warming">Root-mean-square, engine running.</param>
/// <param name="Continuous">The worst root-mean-square current.</param>
/// <param name="Full">The full current.</param>
/// <param name="Peak">The full current, engine running.</param>
/// <param name="Most">The most that a fuse is chosen for.</param>
internal readonly record struct RunAmps(double Warming, double Continuous, double Full, double Peak, double Most);

/// <summary>
/// The least that each run carries and what follows: which conductors cannot carry it, and the least resistance of the others.
/// </summary>
/// <remarks>
/// A conductor's temperature rises with its current and its resistance with its temperature, so at a floor of the current both
/// are floors.
/// </remarks>
internal sealed class RunLowerBounds(SizingTask task, Goal goal, FuseBounds fuses)
{
    private readonly CompleteBuild build = task.Build;

    /// <summary>What is proven of each branch.</summary>
    private RunAmps[] Amps { get; set; } = [];

    /// <summary>The least ampacity of one conductor of each run; whoever leaves candidates out raises it.</summary>
    public double[] WeakestAmps { get; } = new double[task.Build.Runs.Count];

    /// <summary>The least current of each branch with every amplifier at full output, engine running.</summary>
    public double[] RunningAmps { get; private set; } = [];

    /// <summary>Takes what is proven of the amplifiers' currents.</summary>
    public void Take(LoadAmps[] loads)
    {
        RunningAmps = [.. task.Paths.LoadsOn.Select(on => Sum(on, load => loads[load].Running))];
        Amps = [.. task.Paths.LoadsOn.Select(on => on.Count == 0 ? new RunAmps(0, 0, 0, 0, double.PositiveInfinity) : new RunAmps(
            Sum(on, load => Warming(loads[load])),
            Math.Max(Sum(on, load => Warming(loads[load])), Sum(on, load => AtLowest(loads[load]))),
            Math.Max(Sum(on, load => loads[load].Running), Sum(on, load => AtLowest(loads[load]))),
            Sum(on, load => loads[load].Running),
            Sum(on, load => loads[load].Most)))];
        fuses.Take(Amps, WeakestAmps);
    }

    /// <summary>Whether a conductor can carry what a run carries at least, and be protected.</summary>
    public bool CanBear(int run, ConductorChoice choice) => fuses.CanBear(
        run, choice, task.RequiredAmps(run, goal, Amps[run].Continuous, Amps[run].Peak), Amps[run].Continuous);

    /// <summary>The least resistance of a run as warm as the air around it.</summary>
    public double ColdOhms(int run, ConductorChoice choice) =>
        Ohms(run, choice, build.Runs[run].MeanAirCelsius) + fuses.LeastOhms(run, choice);

    /// <summary>The least resistance of a run as warm as its least current makes it.</summary>
    public double LeastOhms(int run, ConductorChoice choice) =>
        Ohms(run, choice, Celsius(run, choice, Amps[run].Warming)) + fuses.LeastOhms(run, choice);

    private static double Warming(LoadAmps load) => load.Share * load.Running;

    private static double AtLowest(LoadAmps load) => load.Share * load.AtLowest;

    private static double Sum(List<int> loads, Func<int, double> amps)
    {
        double sum = 0;
        foreach (int load in loads) sum += amps(load);
        return sum;
    }

    private double Celsius(int run, ConductorChoice choice, double amps)
    {
        task.Count(1);
        CompleteRun described = build.Runs[run];
        return HeatBalance.Of(choice.Conductor).TemperatureAt(amps / choice.Count / described.Bundling, described.MeanAirCelsius);
    }

    private double Ohms(int run, ConductorChoice choice, double celsius)
    {
        CompleteRun described = build.Runs[run];
        return choice.Conductor.OhmsPerMetre(celsius) * described.LengthMetres / choice.Count + described.SeriesOhms;
    }
}
