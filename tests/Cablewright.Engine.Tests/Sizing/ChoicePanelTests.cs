using System.Globalization;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Tests.Sizing;

/// <summary>
/// Five hundred builds, two thirds of them as a shop gets them: no choice keeps a later goal or weighs more than the one that is
/// kept here. A better one is a reason to keep that instead:
/// <c>CABLEWRIGHT_CHOICES=file dotnet test tests/Cablewright.Engine.Tests --filter ChoicePanel</c> writes them.
/// </summary>
public class ChoicePanelTests
{
    private const string Header = "build,goal,weight";
    private const int Builds = 500;

    /// <summary>Weights are told apart, and kept, by fewer digits than they are worked out.</summary>
    private const double Rounding = 2e-6;

    private static readonly string Kept = Path.Combine(AppContext.BaseDirectory, "Golden", "choices.csv");

    [Fact]
    public void Chooses_no_worse_than_was_ever_chosen()
    {
        var chosen = new (int Goal, double Weight)[Builds];
        Parallel.For(0, Builds, i => chosen[i] = Choose(BuildOf(i)));
        if (Environment.GetEnvironmentVariable("CABLEWRIGHT_CHOICES") is { } file) Write(chosen, file);
        (int Goal, double Weight)[] kept =
            [.. File.ReadLines(Kept).Skip(1).Select(line => line.Split(','))
                .Select(row => (
                    int.Parse(row[1], CultureInfo.InvariantCulture), double.Parse(row[2], CultureInfo.InvariantCulture)))];
        Assert.Equal(Builds, kept.Length);
        for (int i = 0; i < Builds; i++)
        {
            Assert.True(chosen[i].Goal <= kept[i].Goal, $"build {i}: goal {chosen[i].Goal} after {kept[i].Goal}");
            Assert.True(
                chosen[i].Goal < kept[i].Goal || chosen[i].Weight <= kept[i].Weight * (1 + Rounding),
                $"build {i}: {chosen[i].Weight} weighs more than {kept[i].Weight}");
        }
    }

    /// <summary>No thin conductors beside each other, which no shop sells as one feed.</summary>
    [Fact]
    public void Lays_only_the_largest_in_parallel() => Parallel.For(0, 300, i =>
    {
        Variant variant = Worked(BuildOf(i));
        Assert.All(variant.Runs, run => Assert.True(
            run.Choice.Count == 1 || run.Choice.Conductor.Size.MetalAreaMm2 > 50, $"build {i}: {run.Choice} in {run.Id}"));
    });

    /// <summary>The first goal that it keeps, -1 for none, which counts as the last; and what it weighs.</summary>
    private static (int Goal, double Weight) Choose(Build build)
    {
        Variant variant = Worked(build);
        var problem = new ChoiceProblem(build);
        int goal = Array.FindIndex(problem.Goals, each => problem.Keeps(variant.Sized.Evaluation, each));
        return (goal < 0 ? problem.Goals.Length : goal, problem.Task.WeightOf(variant.Sized.Evaluation.Design.Conductors));
    }

    private static Variant Worked(Build build) =>
        Variant.Of(build, RulesetLibrary.Newest, new WorkMeter(double.PositiveInfinity).Part(WorkBudgets.Sizing));

    private static void Write((int Goal, double Weight)[] chosen, string file)
    {
        string[] lines =
            [.. chosen.Select((each, i) => string.Create(CultureInfo.InvariantCulture, $"{i},{each.Goal},{each.Weight:G9}"))];
        File.WriteAllLines(file, [Header, .. lines]);
    }

    private static Build BuildOf(int index) => index switch
    {
        < 340 => new ShopBuilds(100_000 + index).Any(),
        < 380 => new RandomBuilds(110_000 + index).ThreeOpen(),
        < 400 => new RandomBuilds(110_000 + index).FourOpen(),
        < 440 => new RandomBuilds(110_000 + index).Priced(),
        < 450 => new RandomBuilds(110_000 + index).Looped(),
        < 460 => new RandomBuilds(110_000 + index).TwoBatteries(),
        _ => new RandomBuilds(110_000 + index).Tree(2 + index % 11),
    };
}
