using System.Diagnostics;
using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Documents;
using Cablewright.Service.Tests.Support;
using Xunit.Abstractions;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Random legal builds over the whole contract: each gets an answer that keeps it, always the same one.</summary>
public class LegalBuildTests(ServiceFixture service, ITestOutputHelper output) : IClassFixture<ServiceFixture>
{
    private const int Usual = 2_000;

    /// <summary>
    /// One build of so many gets its whole answer; questions and changes take a hundred times as long as all the rest.
    /// </summary>
    private const int AnsweredWhole = 10;

    /// <summary>One case of so many is sent again, and with the changes made that its answer names.</summary>
    private const int SentAgain = 20;

    private const double LeastAccepted = 0.8;

    [Fact]
    public async Task Every_legal_build_gets_an_answer_that_keeps_the_contract()
    {
        output.WriteLine($"{FuzzRun.SeedVariable}={FuzzRun.Seed}");
        var failures = new Failures();
        var outcomes = new Outcomes();
        int sent = 0;
        await Parallel.ForEachAsync(FuzzRun.Some(Usual, AnsweredWhole), async (number, _) =>
        {
            JsonObject build = RandomBuild.Of(new Dice(FuzzRun.Seed, number));
            Interlocked.Increment(ref sent);
            await Try(number, build.ToJsonString(), failures, outcomes);
        });
        outcomes.Write(output);
        await failures.AssertNone((body, trouble) => Shrinking.Shrink(body, smaller => FailsLikewise(smaller, trouble)));
        Assert.True(outcomes["200"] >= LeastAccepted * sent, $"only {outcomes["200"]} of {sent} builds are legal");
    }

    /// <summary>Two at a time, without the questions and changes that only a build by itself gets.</summary>
    [Fact]
    public async Task Any_two_legal_builds_can_be_put_side_by_side()
    {
        output.WriteLine($"{FuzzRun.SeedVariable}={FuzzRun.Seed}");
        var failures = new Failures();
        var outcomes = new Outcomes();
        await Parallel.ForEachAsync(FuzzRun.Cases(Usual).Where(number => number % 2 == 0), async (number, _) =>
        {
            string body = new JsonObject { ["builds"] = new JsonArray(Plain(number), Plain(number + 1)) }.ToJsonString();
            long begun = Stopwatch.GetTimestamp();
            Answer answer = await FuzzFiles.Whilst(
                $"comparing-{FuzzRun.Seed}-{number}", body, () => service.PostTo("/v1/assessments/comparisons", body));
            outcomes.Took(number, Stopwatch.GetElapsedTime(begun));
            outcomes.Add($"{answer.Status}");
            if (answer.Status is not (200 or 422)) failures.Add(number, $"status {answer.Status}: {answer.Text}", body);
            else if (answer.Status == 200)
            {
                foreach (string fault in ContractSchemas.Faults("Comparison", answer.Json))
                    failures.Add(number, "schema: " + fault, body);
            }
        });
        outcomes.Write(output);
        await failures.AssertNone((body, _) => Task.FromResult(body));
        Assert.True(outcomes["200"] > outcomes["422"], $"only {outcomes["200"]} pairs are legal, {outcomes["422"]} are not");

        static JsonObject Plain(int number)
        {
            JsonObject build = RandomBuild.Of(new Dice(FuzzRun.Seed, number));
            build.Remove("include");
            return build;
        }
    }

    private async Task Try(int number, string body, Failures failures, Outcomes outcomes)
    {
        long begun = Stopwatch.GetTimestamp();
        Answer answer = await FuzzFiles.Whilst($"running-{FuzzRun.Seed}-{number}", body, () => service.Post(body));
        outcomes.Took(number, Stopwatch.GetElapsedTime(begun));
        outcomes.Add($"{answer.Status}");
        if (answer.Status == 422)
        {
            foreach (string code in answer.Faults.Select(fault => fault.Code).Distinct()) outcomes.Add(code);
        }

        foreach (string trouble in await TroublesOf(answer, body, isSentAgain: number % SentAgain == 0))
            failures.Add(number, trouble, body);
    }

    private async Task<IReadOnlyList<string>> TroublesOf(Answer answer, string body, bool isSentAgain)
    {
        IReadOnlyList<string> troubles = AnswerCheck.Troubles(answer, body);
        if (answer.Status != 200 || !isSentAgain) return troubles;
        Answer again = await service.Post(body);
        return
        [
            .. troubles,
            .. again.Body.AsSpan().SequenceEqual(answer.Body) ? (string[])[] : ["another answer to the same body"],
            .. await BrokenPromises(answer, body),
        ];
    }

    private async Task<IReadOnlyList<string>> BrokenPromises(Answer answer, string body)
    {
        var broken = new List<string>();
        foreach ((JsonNode change, string changed) in ChangePromises.In(answer.Json, body))
        {
            Answer after = await service.Post(changed);
            if (after.Status == 200) broken.AddRange(ChangePromises.Broken(change, after.Json));
            else broken.Add($"a change that makes a build faulty: {after.Text}");
        }

        return broken;
    }

    private async Task<bool> FailsLikewise(string body, string trouble)
    {
        Answer answer = await service.Post(body);
        IReadOnlyList<string> troubles = await TroublesOf(answer, body, isSentAgain: true);
        return troubles.Any(other => Failures.KindOf(other) == Failures.KindOf(trouble));
    }
}
