using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using static Cablewright.Engine.Tests.SampleBuilds;

namespace Cablewright.Engine.Tests.Reports;

/// <summary>Sentences call a part what its owner calls it; values and pointers keep to the ids.</summary>
public class GivenNameTests
{
    private static readonly Build Named = (OneAmplifier() with
    {
        Amplifiers = [OneAmplifier().Amplifiers[0] with { Name = "Bass in the boot" }],
    }).WithRun("main", run => run with { LengthMetres = 60, Name = "Feed along the sill" });

    [Fact]
    public void Names_stand_in_sentences_and_ids_in_values()
    {
        Assessment answer = Assessed.WithAdvice(Named);
        Finding drop = answer.Findings.Single(finding => finding.Code == "amplifier.drop-over-limit");
        Assert.Contains("amplifier \"Bass in the boot\"", drop.Message, StringComparison.Ordinal);
        Assert.Equal("bass", drop.Params!["amplifier"].Text);
        Assert.Contains("run \"Feed along the sill\"", drop.Remedy, StringComparison.Ordinal);
        Assert.Contains("\"Bass in the boot\" gets", answer.Summary, StringComparison.Ordinal);
        Assert.All(
            answer.Feasibility!.Changes.Where(change => change.Message.Contains("in run", StringComparison.Ordinal)),
            change => Assert.DoesNotContain("\"main\"", change.Message, StringComparison.Ordinal));
    }

    /// <summary>A run and a place may have the same id; each keeps its own name.</summary>
    [Fact]
    public void A_run_is_not_called_by_the_name_of_a_place()
    {
        Build build = Named with { Amplifiers = [Named.Amplifiers[0] with { Id = "main" }] };
        build = build with
        {
            Runs = [.. build.Runs.Select(run => run with
            {
                From = run.From == "bass" ? "main" : run.From, To = run.To == "bass" ? "main" : run.To, Name = null,
            })],
        };
        Finding drop = Assessed.WithAdvice(build).Findings.Single(finding => finding.Code == "amplifier.drop-over-limit");
        Assert.Contains("amplifier \"Bass in the boot\"", drop.Message, StringComparison.Ordinal);
        Assert.Contains("run \"main\"", drop.Remedy, StringComparison.Ordinal);
    }
}
