using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Sizing;
using Cablewright.Engine.Tests.Published;
using Cablewright.Vocabulary;
using CsCheck;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>What is left open is chosen so that every rule holds, and no larger than that needs.</summary>
public class ChoiceTests
{
    private const int Builds = 100;

    private static readonly ConductorSize[] Usual = [.. CandidateList.Stocked(UnitSystem.Us)];

    [Fact]
    public void A_choice_stated_gives_the_numbers_it_was_chosen_for() => OpenBuilds.Trees.Sample(build =>
    {
        Assessment chosen = Assessed.Of(build), stated = Assessed.Of(OpenBuilds.Restated(build, chosen));
        foreach ((AmplifierResult one, AmplifierResult other) in chosen.Amplifiers.Zip(stated.Amplifiers))
            Near.Relative(one.TerminalVolts, other.TerminalVolts, 1e-6, one.Id);
        if (!IsOnTheEdge(chosen)) Assert.Equal(Broken(chosen), Broken(stated));
        Assert.All(stated.Runs, run => Assert.Equal(Decided.Given, run.Conductor.Decided));
        Assert.All(chosen.Runs.Where(run => run.Id != "strap"), run => Assert.Equal(Decided.Chosen, run.Conductor.Decided));
    }, iter: Builds);

    /// <summary>
    /// Neither with the fuses that were chosen nor with them open again: a slightly other current may ask for another fuse, whose
    /// resistance counts too, and fuses are chosen for the current and not for the drop.
    /// </summary>
    [Fact]
    public void No_chosen_run_could_be_one_size_smaller_by_itself() => OpenBuilds.Trees.Sample(build =>
    {
        Assessment answer = Assessed.Of(build);
        Goal target = new ChoiceProblem(build).Goals[0];
        if (Breaks(answer, target) || answer.Findings.Any(finding => finding.Code == "sizing.beyond-stock")) return;
        Build[] stated = [OpenBuilds.Restated(build, answer), WithChosenSizes(build, answer)];
        foreach (RunResult run in answer.Runs.Where(
            run => run.Conductor.Decided is Decided.Chosen && !run.Id.StartsWith("return", StringComparison.Ordinal)))
        {
            int index = Array.FindIndex(Usual, size => size.Label == run.Conductor.Size);
            if (index == 0 || (run.Id == "main" && Feeds(answer).Any(feed => feed.IsLargerThan(Usual[index - 1])))) continue;
            Assert.True(
                Array.Exists(stated, known => Breaks(Assessed.Of(Smaller(known, run.Id, Usual[index - 1])), target)),
                $"{run.Id} could be {Usual[index - 1]}");
        }
    }, iter: Builds);

    /// <summary>What leaves the block, which the main run is no smaller than.</summary>
    private static IEnumerable<ConductorSize> Feeds(Assessment answer) => answer.Runs
        .Where(run => run.Id.StartsWith("feed", StringComparison.Ordinal)).Select(run => ConductorSize.Of(run.Conductor.Size));

    /// <summary>The build with a run of another size, and the ground that is the same cable.</summary>
    private static Build Smaller(Build build, string run, ConductorSize size)
    {
        string ground = run.Replace("feed", "return", StringComparison.Ordinal);
        return build.WithSize(run, size).WithSize(ground, size);
    }

    /// <summary>
    /// Every size for a run there and a run back is tried: where any keeps the rules, the choice does, with the least metal.
    /// </summary>
    [Fact]
    public void Where_some_choice_keeps_every_rule_the_lightest_is_found() => OpenBuilds.ThereAndBack.Sample(build =>
    {
        Assessment answer = Assessed.Of(build);
        Goal target = new ChoiceProblem(build).Goals[0];
        double? least = LeastMetal(build, target);
        Assert.Equal(least is null, Breaks(answer, target));
        if (least is { } grams) Near.Relative(grams, answer.Sizing!.MassGrams, 1e-6, "metal");
    }, iter: 10);

    /// <summary>Whether a drop is so near to a limit that temperatures found to 0.001 K cannot tell the side.</summary>
    private static bool IsOnTheEdge(Assessment answer) => answer.Amplifiers.Any(amplifier =>
        Math.Abs(amplifier.ConductorDropPercent / 3 - 1) < 1e-5 || Math.Abs(amplifier.ConductorDropPercent / 5 - 1) < 1e-5);

    private static double? LeastMetal(Build build, Goal target)
    {
        double? least = null;
        foreach (ConductorSize there in Usual)
        {
            double grams = 1000 * (Kilograms(build.Runs[0], there) + Kilograms(build.Runs[1], there));
            if (grams >= least || Breaks(Assessed.Of(build.WithSize("main", there).WithSize("return", there)), target)) continue;
            least = grams;
        }

        return least;
    }

    private static double Kilograms(Run run, ConductorSize size) =>
        Conductor.Of(size, Material.Copper).KilogramsPerMetre * run.LengthMetres;

    private static Build WithChosenSizes(Build build, Assessment answer) =>
        answer.Runs.Aggregate(build, (changed, run) => changed.WithSize(run.Id, ConductorSize.Of(run.Conductor.Size)));

    /// <summary>
    /// Whether a rule that a choice has to keep does not hold: one that fails, the design target, the size of the return, one
    /// about fuse, conductor and load, or that a supply conductor carries full output continuously.
    /// </summary>
    private static bool Breaks(Assessment answer, Goal target) =>
        answer.Amplifiers.Zip(target.Volts).Any(each => Significant.Exceeds(each.First.DropVolts, each.Second))
        || answer.Runs.Any(run => run.Side is Side.Supply && Significant.Exceeds(run.PeakCurrentAmps, run.AmpacityAmps))
        || answer.Findings.Any(finding => finding.Severity is Severity.Fail || finding.Code is "amplifier.return-below-supply"
            or "run.no-fuse-fits" or "fuse.above-conductor-rating" or "fuse.missing-at-reduction" or "fuse.below-load"
            || finding is { Code: "fuse.opens-at-full-output", Severity: not Severity.Info });

    /// <summary>
    /// The rules broken; where no fuse fits, one that is stated instead of chosen is too large for its conductor.
    /// </summary>
    private static string[] Broken(Assessment answer) => [.. answer.Findings
        .Where(finding => finding.Severity is Severity.Fail || finding.Code.StartsWith("amplifier.", StringComparison.Ordinal))
        .Select(finding => finding.Code is "run.no-fuse-fits" or "fuse.above-conductor-rating"
            ? "the fuse of " + Run(finding.Pointer)
            : finding.Code + finding.Pointer)
        .Order(StringComparer.Ordinal)];

    private static string Run(string pointer) => string.Join('/', pointer.Split('/').Take(3));
}
