using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using Cablewright.Contract;
using Cablewright.Contract.Audits;
using Cablewright.Contract.Builds;
using Cablewright.Contract.Comparisons;
using Cablewright.Contract.Kits;
using Cablewright.Service.Assessments;
using Cablewright.Service.Audits;
using Cablewright.Service.Comparisons;
using Cablewright.Service.Documents;
using Cablewright.Service.Kits;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Documents;

/// <summary>
/// Callers whose serializers write every member send <c>null</c> for what they leave open: it is read, and published, as left
/// out. For anything else <c>null</c> is refused, by the service and by the schema alike.
/// </summary>
public class NullTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private static readonly Dictionary<string, (HttpMethod Method, Operation Operation, Type Type)> Calls = new()
    {
        ["/v1/assessments"] = (HttpMethod.Post, PostAssessment.Operation, typeof(Build)),
        ["/v1/assessments/comparisons"] = (HttpMethod.Post, PostComparison.Operation, typeof(ComparisonRequest)),
        ["/v1/conductor-audits"] = (HttpMethod.Post, PostConductorAudit.Operation, typeof(BenchReport)),
        ["/v1/kit-checks"] = (HttpMethod.Post, PostKitCheck.Operation, typeof(KitCheck)),
        ["/v1/kit-matches"] = (HttpMethod.Post, PostKitMatch.Operation, typeof(KitMatchRequest)),
        ["/v1/shops/demo/kits/AK-150"] = (HttpMethod.Put, PutKit.Operation, typeof(Kit)),
    };

    public static TheoryData<string> Addresses => [.. Calls.Keys];

    /// <summary>The second call leaves out what the first sent as <c>null</c>; the same answer has the same tag.</summary>
    [Theory]
    [MemberData(nameof(Addresses))]
    public async Task A_null_for_what_may_be_left_out_says_the_same_as_leaving_it_out(string address)
    {
        JsonNode open = Example(address), filled = open.DeepClone();
        int nulls = FillWithNulls(filled, Shape(address));
        Assert.True(nulls > 0);
        Assert.Empty(ContractSchemas.Faults(Calls[address].Type.Name, filled));
        Answer withNulls = await Send(address, filled), without = await Send(address, open);
        Assert.True(withNulls.Status is 200 or 201, withNulls.Text);
        Assert.Equal(without.Text, withNulls.Text);
        Assert.Equal(without.Headers["ETag"], withNulls.Headers["ETag"]);
        Assert.False(HoldsNull(withNulls.Json));
    }

    [Theory]
    [MemberData(nameof(Addresses))]
    public async Task A_null_for_what_must_be_there_is_refused(string address)
    {
        string[] required = [.. Required(Example(address), Shape(address), "")];
        foreach (string pointer in required)
        {
            JsonNode broken = Example(address);
            Put(broken, pointer, null);
            Assert.NotEmpty(ContractSchemas.Faults(Calls[address].Type.Name, broken));
            Answer answer = await Send(address, broken);
            ProblemAssertions.IsProblem(answer, 400, "request.not-understood");
            Assert.Equal((pointer, "value.null"), Assert.Single(answer.Faults));
            Assert.Contains("null is not accepted; expected ", (string)answer.Json["detail"]!);
        }
    }

    [Fact]
    public async Task In_a_batch_too()
    {
        JsonNode filled = Example("/v1/assessments");
        FillWithNulls(filled, Shape("/v1/assessments"));
        string without = (await Send("/v1/assessments", Example("/v1/assessments"))).Json.ToJsonString();
        string line = filled.ToJsonString();
        Answer lines = await service.PostBatch(line, "application/x-ndjson", ("Accept", "application/x-ndjson"));
        Answer array = await service.PostBatch($"[{line},null]", "application/json", ("Accept", "application/x-ndjson"));
        Assert.Equal(without, Assert.Single(lines.Lines)["assessment"]!.ToJsonString());
        Assert.Equal([200, 400], array.Lines.Select(answer => (int)answer["status"]!));
        Assert.Equal("value.null", (string)array.Lines[1]["problem"]!["errors"]![0]!["code"]!);
    }

    /// <summary>A fuse that is not fitted is another statement than none at all, which has one chosen.</summary>
    [Fact]
    public async Task A_fuse_of_null_is_chosen()
    {
        Answer answer = await service.Post(Builds.With(build => build["runs"]![0]!["fuse"] = null));
        Assert.Equal("chosen", (string)answer.Json["runs"]![0]!["fuse"]!["decided"]!);
    }

    private static JsonNode Example(string address) => Calls[address].Operation.Body!.Example()!;

    private static JsonTypeInfo Shape(string address) => ContractJson.Default.GetTypeInfo(Calls[address].Type)!;

    private async Task<Answer> Send(string address, JsonNode body)
    {
        using var request = new HttpRequestMessage(Calls[address].Method, address)
        {
            Content = new StringContent(body.ToJsonString(), null, "application/json"),
        };
        return await service.Send(request, ("Authorization", $"Bearer {await service.Key("demo")}"));
    }

    /// <summary>Adds <c>null</c> for every member that is not there, at every depth, and counts them.</summary>
    private static int FillWithNulls(JsonNode? node, JsonTypeInfo shape) => node switch
    {
        JsonArray list => list.Sum(item => FillWithNulls(item, ItemOf(shape))),
        JsonObject whole => shape.Properties.Sum(member =>
        {
            if (whole.ContainsKey(member.Name)) return FillWithNulls(whole[member.Name], Of(member));
            whole[member.Name] = null;
            return 1;
        }),
        _ => 0,
    };

    /// <summary>Where a required member, or an item of a list, stands.</summary>
    private static IEnumerable<string> Required(JsonNode? node, JsonTypeInfo shape, string at) => node switch
    {
        JsonArray list => list.SelectMany(
            (item, index) => (string[])[$"{at}/{index}", .. Required(item, ItemOf(shape), $"{at}/{index}")]),
        JsonObject whole => shape.Properties.Where(member => whole.ContainsKey(member.Name)).SelectMany(member =>
            (string[])[
                .. member.IsRequired ? (string[])[$"{at}/{member.Name}"] : [],
                .. Required(whole[member.Name], Of(member), $"{at}/{member.Name}"),
            ]),
        _ => [],
    };

    private static bool HoldsNull(JsonNode? node) => node switch
    {
        null => true,
        JsonArray list => list.Any(HoldsNull),
        JsonObject whole => whole.Any(member => HoldsNull(member.Value)),
        _ => false,
    };

    private static void Put(JsonNode root, string pointer, JsonNode? value)
    {
        string[] path = pointer.Split('/')[1..];
        JsonNode at = path[..^1].Aggregate(root, (node, step) => node is JsonArray list ? list[int.Parse(step)]! : node[step]!);
        if (at is JsonArray items) items[int.Parse(path[^1])] = value;
        else at[path[^1]] = value;
    }

    private static JsonTypeInfo Of(JsonPropertyInfo member) => member.Options.GetTypeInfo(member.PropertyType);

    private static JsonTypeInfo ItemOf(JsonTypeInfo list) => list.Options.GetTypeInfo(list.ElementType!);
}
