using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Documents;
using Cablewright.Service.Tests.Examples;
using Cablewright.Service.Tests.Support;
using CsCheck;

namespace Cablewright.Service.Tests.Problems;

/// <summary>
/// Builds with random damage: whatever is sent, the answer is an assessment or a problem that names the place, never a 500.
/// </summary>
public class HostileBuildTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private static readonly Gen<JsonNode?> AnyValue = Gen.OneOfConst<string>(
            "null", "true", "-1", "1e400", "0", "[]", "{}", "[[]]", "\"\"", "\"body\"", "\"starter\"", "\"bass\"", "\"0 m\"",
            "\"0.01 m\"", "\"100 m\"", "\"50 kW\"", "\"0.5 A\"", "\"2000 A\"", "\"60 V\"", "\"6 V\"", "\"22 AWG\"",
            "\"4/0 AWG\"", "\"150 mm2\"", "\"return\"", "\"supply\"", "\"aluminium\"", "\"60 C\"", "\"-40 C\"",
            "\"1 F\"", "\"2 h\"", "\"1 ms\"", "\"800 rpm\"", "\"0 %\"", "\"100 %\"",
            "\"relay\"", "\"diode\"", "\"dc-dc-charger\"", "2.7",
            "\"\\u0000\"", "\"é\"", "8", "false")
        .Select(text => Parse(text));

    private static readonly string[] Undamaged =
        [
            Builds.Small,
            ExampleFiles.Request("two-amplifiers"),
            ExampleFiles.Request("rear-battery"),
            ExampleFiles.Request("coach-24v"),
            ExampleFiles.Request("charger-and-capacitor"),
            CompleteBuild.WithAlternator.ToJsonString(),
            CompleteBuild.WithConverter.ToJsonString(),
        ];

    private static readonly Gen<(int Place, JsonNode? Value, bool Removes)[]> Damage =
        Gen.Select(Gen.Int[0, 240], AnyValue, Gen.Bool).Select((place, value, removes) => (place, value, removes)).Array[1, 4];

    [Fact]
    public void Nothing_that_is_sent_makes_the_service_fail() => Damage.Sample(
        damage =>
        {
            JsonNode build = JsonNode.Parse(Undamaged[damage[0].Place % Undamaged.Length])!;
            Apply(build, damage);
            Answer answer = service.Post(build.ToJsonString()).GetAwaiter().GetResult();
            Assert.True(answer.Status is 200 or 400 or 422, $"{answer.Text} for {build.ToJsonString()}");
            if (answer.Status == 200) Assert.Empty(ContractSchemas.Faults("Assessment", answer.Json));
            else Assert.NotEmpty(answer.Faults);
        },
        iter: 1000, threads: 1);

    private static JsonNode? Parse(string text) => text == "1e400" ? JsonValue.Create(1e300) : JsonNode.Parse(text);

    private static void Apply(JsonNode build, (int Place, JsonNode? Value, bool Removes)[] damage)
    {
        foreach ((int place, JsonNode? value, bool removes) in damage)
        {
            JsonNode?[] places = [.. Members(build)];
            if (places.Length == 0) return;
            JsonNode? at = places[place % places.Length];
            if (at?.Parent is JsonObject parent)
            {
                if (removes) parent.Remove(at.GetPropertyName());
                else parent[at.GetPropertyName()] = value?.DeepClone();
            }
            else if (at?.Parent is JsonArray list && removes)
            {
                list.RemoveAt(at.GetElementIndex());
            }
        }
    }

    private static IEnumerable<JsonNode?> Members(JsonNode? node) => node switch
    {
        JsonObject whole => whole.SelectMany(member => Members(member.Value).Prepend(member.Value)),
        JsonArray list => list.SelectMany(item => Members(item).Prepend(item)),
        _ => [],
    };
}
