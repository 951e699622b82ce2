using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;
using CsCheck;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Wiring;

/// <summary>Who shares a return, against every way back being walked.</summary>
public class SharedReturnsTests
{
    private const int Bars = 4;

    /// <summary>Bars that lead to the body or to an earlier bar, amplifiers on any of them, and at times a second way.</summary>
    private static readonly Gen<Build> AnyReturns = Gen.Select(
        Gen.Int[0, 99].Array[Bars], Gen.Int[0, Bars].Array[1, 4], Gen.Select(Gen.Int[0, Bars], Gen.Int[0, Bars]).Array[0, 2],
        (parents, amplifiers, more) => BuildOf(
            [.. parents.Select((pick, i) => (i + 1, pick % (i + 1))), .. more.Where(pair => pair.Item1 != pair.Item2)],
            amplifiers));

    [Fact]
    public void They_share_what_none_of_them_gets_back_without() => AnyReturns.Sample(build =>
    {
        Assert.Empty(FaultFinder.Find(build));
        var circuit = new CircuitModel(
            BuildCompletion.Complete(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity)));
        for (int run = 0; run < build.Runs.Count; run++)
            Assert.Equal(CutOffWithout(build, run), circuit.SharedReturns.AmplifiersOver(run));
    }, iter: 2000);

    private static int[] CutOffWithout(Build build, int without)
    {
        Run run = build.Runs[without];
        if (!run.From.StartsWith("bar", StringComparison.Ordinal)) return [];
        return [.. Enumerable.Range(0, build.Amplifiers.Count)
            .Where(amplifier => !Reaches(build.Amplifiers[amplifier].Id, [without]))];

        bool Reaches(string place, int[] gone) => place is "body" || Enumerable.Range(0, build.Runs.Count)
            .Where(other => !gone.Contains(other) && build.Runs[other].Side is Side.Return)
            .Any(other => (build.Runs[other].From == place && Reaches(build.Runs[other].To, [.. gone, other]))
                || (build.Runs[other].To == place && Reaches(build.Runs[other].From, [.. gone, other])));
    }

    /// <summary>Place 0 is the body.</summary>
    private static Build BuildOf(IReadOnlyList<(int From, int To)> between, int[] at)
    {
        int[] reached = [.. Enumerable.Range(1, Bars)
            .Where(bar => at.Contains(bar) || between.Count(pair => pair.From == bar || pair.To == bar) > 1)];
        return OneAmplifier() with
        {
            Amplifiers = [.. at.Select((_, i) => new Amplifier { Id = $"a{i}", OnBoardFuseAmps = 10 })],
            Runs =
            [
                .. at.Select((_, i) => Run($"feed{i}", "starter", $"a{i}", 1, "4 AWG") with { Fuse = Anl(100) }),
                .. at.Select((bar, i) => Run($"return{i}", $"a{i}", Place(bar), 1, "4 AWG") with { Side = Side.Return }),
                .. between.Select((pair, i) => Turned(pair, i)),
                .. Enumerable.Range(1, Bars).Except(reached)
                    .Select(bar => Run($"stub{bar}", Place(bar), "body", 1, "4 AWG") with { Side = Side.Return }),
            ],
        };

        static string Place(int bar) => bar == 0 ? "body" : $"bar{bar}";

        static Run Turned((int From, int To) pair, int number)
        {
            (int from, int to) = pair.From == 0 ? (pair.To, pair.From) : pair;
            return Run($"bar-run{number}", Place(from), Place(to), 1, "4 AWG") with { Side = Side.Return };
        }
    }
}
