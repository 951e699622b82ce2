using BenchmarkDotNet.Attributes;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Network;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Tests.Published.Ngspice;
using Cablewright.Engine.Tests.Shapes;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Assessments;

namespace Cablewright.Benchmarks;

/// <summary>
/// The node voltages of one circuit of four amplifiers and nine runs: by the engine, and by a whole run of Debian's ngspice, from
/// reading the netlist to printing. Before they are timed, both are made to agree.
/// </summary>
public class CircuitBenchmarks
{
    private const double Tolerance = 1e-6;

    private readonly string netlistPath = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".cir");
    private readonly CircuitModel circuit;
    private readonly double[] branchOhms;
    private readonly double[] heldVolts;
    private readonly SourceState[] sources;
    private readonly LoadDraw[] loads;
    private readonly string netlist;

    public CircuitBenchmarks()
    {
        Assessment answer = Assessor.Assess(StarBuild.Small, RulesetLibrary.Newest);
        CompleteBuild build =
            BuildCompletion.Complete(StarBuild.Small, RulesetLibrary.Newest, WorkBudgets.MeterFor(StarBuild.Small));
        circuit = new CircuitModel(build);
        branchOhms = [.. answer.Runs.Select(run => run.ResistanceMilliohms / 1000), .. circuit.FixedOhms];
        heldVolts = circuit.FixedVoltsIn(OperatingCase.Running);
        sources = circuit.SourcesIn(OperatingCase.Running);
        loads = [.. build.Draws.Select(draw => draw.Full)];
        // The netlist knows stated straps only, and this build has one assumed.
        netlist = new AnswerNetlist(StarBuild.Small, answer).Text()
            .Replace(
                "\nRbody ",
                FormattableString.Invariant($"\nRstrap foot 0 {circuit.FixedOhms[0]:R}\nRbody "),
                StringComparison.Ordinal);
    }

    [GlobalSetup(Target = nameof(Ngspice))]
    public void WriteNetlist()
    {
        File.WriteAllText(netlistPath, netlist);
        Dictionary<string, double> printed = Simulator.PrintedByFile(netlistPath);
        Solve();
        for (int load = 0; load < loads.Length; load++)
        {
            double simulator = printed[$"across_a{load}"], engine = circuit.Solver.LoadVolts(load);
            if (Math.Abs(simulator / engine - 1) > Tolerance)
                throw new InvalidOperationException($"a{load}: engine {engine:R} V, simulator {simulator:R} V");
        }
    }

    [GlobalCleanup(Target = nameof(Ngspice))]
    public void DeleteNetlist() => File.Delete(netlistPath);

    [Benchmark(Baseline = true)]
    public bool Solve() => circuit.Solver.Solve(branchOhms, sources, loads, heldVolts);

    [Benchmark]
    public bool PrepareAndSolve() => new CircuitSolver(circuit.Network).Solve(branchOhms, sources, loads, heldVolts);

    [Benchmark]
    public Dictionary<string, double> Ngspice() => Simulator.PrintedByFile(netlistPath);
}
