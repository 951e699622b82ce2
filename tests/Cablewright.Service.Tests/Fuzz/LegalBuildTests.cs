using System.Diagnostics;
using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;
using Xunit.Abstractions;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Random legal builds over the whole contract: each gets an answer that keeps it, always the same one.</summary>
public class LegalBuildTests(ServiceFixture service, ITestOutputHelper output) : IClassFixture<ServiceFixture>
{
    private const int Usual = 2_000;

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
        await Parallel.ForEachAsync(FuzzRun.Cases(Usual), async (number, _) =>
        {
            JsonObject build = RandomBuild.Of(new Dice(FuzzRun.Seed, number));
            Interlocked.Increment(ref sent);
            await Try(number, build.ToJsonString(), failures, outcomes);
        });
        outcomes.Write(output);
        await failures.AssertNone((body, trouble) => Shrinking.Shrink(body, smaller => FailsLikewise(smaller, trouble)));
        Assert.True(outcomes["200"] >= LeastAccepted * sent, $"only {outcomes["200"]} of {sent} builds are legal");
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
