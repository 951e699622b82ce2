using System.Text;
using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Stores;
using Cablewright.Service.Tests.Support;
using Xunit.Abstractions;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>
/// Right requests of every call with random damage to body, headers, method or address: whatever is sent, the answer is one that
/// the contract has, never a failure of the service.
/// </summary>
public class HostileRequestTests(ITestOutputHelper output)
{
    private const int Usual = 10_000;

    [Fact]
    public async Task Whatever_is_sent_gets_an_answer_of_the_contract()
    {
        output.WriteLine($"{FuzzRun.SeedVariable}={FuzzRun.Seed}");
        await using TestDatabase database = await TestDatabase.Make(Store.Sqlite);
        await using CatalogueService service = await CatalogueService.Start(database);
        string key = (await service.Key(ContractCalls.Shop)).Text;
        var failures = new Failures();
        var outcomes = new Outcomes();
        foreach (int number in FuzzRun.Cases(Usual))
        {
            var dice = new Dice(FuzzRun.Seed, number);
            ContractCall call = ContractCalls.AnyOne(dice);
            FuzzRequest request = Damaged(call, key, dice);
            string told = request.ToString();
            (string outcome, IReadOnlyList<string> troubles) = await FuzzFiles.Whilst(
                $"hostile-{FuzzRun.Seed}-{number}", told, () => Try(service, call, request));
            outcomes.Add($"{call.Method} {call.Path}: {outcome}");
            foreach (string trouble in troubles) failures.Add(number, $"{call.Method} {call.Path}: {trouble}", told);
        }

        outcomes.Write(output);
        await failures.AssertNone((body, _) => Task.FromResult(body));
    }

    private static async Task<(string Outcome, IReadOnlyList<string> Troubles)> Try(
        CatalogueService service, ContractCall call, FuzzRequest request)
    {
        try
        {
            Answer answer = await service.Send(request.ToMessage());
            return ($"{answer.Status}", CallCheck.Troubles(call, request, answer));
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            return ("none", [$"no answer: {fault.GetType().Name}: {fault.Message}"]);
        }
    }

    private static FuzzRequest Damaged(ContractCall call, string key, Dice dice)
    {
        var request = new FuzzRequest
        {
            Method = call.Method,
            Address = ContractCalls.Address(call, dice),
            ContentType = call.ContentType,
        };
        if (call.Path.Contains("kit", StringComparison.Ordinal) || dice.Chance(0.2))
            request.Headers.Add(("Authorization", "Bearer " + key));
        bool damagesBody = call.HasBody && dice.Chance(0.8);
        if (call.HasBody) request.Body = Body(call, damagesBody, dice);
        if (!damagesBody || dice.Chance(0.25)) HeaderDamage.Apply(request, dice);
        return request;
    }

    private static byte[] Body(ContractCall call, bool isDamaged, Dice dice)
    {
        JsonNode document = ContractCalls.Body(call, dice);
        int lines = call.HasLines ? dice.Between(1, 3) : 1;
        string[] texts = [.. Enumerable.Range(0, lines)
            .Select(_ => isDamaged && dice.Chance(0.85) ? BodyDamage.Text(document, dice) : document.ToJsonString())];
        byte[] body = Encoding.UTF8.GetBytes(string.Join('\n', texts));
        return isDamaged && dice.Chance(0.25) ? BodyDamage.Bytes(body, dice) : body;
    }
}
