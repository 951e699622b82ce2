using System.Collections;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Cablewright.Contract.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Reports.Assessments;
using Cablewright.Service.Answers;
using Cablewright.Service.Assessments;
using Cablewright.Service.Tests.Documents;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Assessments;

/// <summary>
/// No member of the contract is lost on the way to the engine: each that is changed makes another question, and so another id.
/// </summary>
public class CompleteBuildTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    /// <summary>The one value that stands beside the engine's build, not in it.</summary>
    private const string Ruleset = "/ruleset";

    public static TheoryData<string> Values =>
        [.. CompleteBuild.Leaves().Select(leaf => leaf.Pointer).Where(pointer => pointer != Ruleset)];

    [Fact]
    public void It_states_every_member_of_the_contract()
    {
        HashSet<PropertyInfo> stated = [.. CompleteBuild.Leaves().Select(leaf => leaf.Member)];
        Assert.Equal([], LeavesOf(typeof(Build)).Except(stated).Select(member => $"{member.DeclaringType!.Name}.{member.Name}"));
    }

    [Theory]
    [MemberData(nameof(Values))]
    public void A_changed_value_is_another_question(string pointer)
    {
        JsonNode changed = CompleteBuild.Json;
        string[] path = pointer.Split('/')[1..];
        JsonNode at = path[..^1].Aggregate(
            changed, (node, step) => int.TryParse(step, out int index) ? node[index]! : node[step]!);
        PropertyInfo member = CompleteBuild.Leaves().Single(leaf => leaf.Pointer == pointer).Member;
        if (at is JsonArray list) list[int.Parse(path[^1])] = Another(list[int.Parse(path[^1])]!, member);
        else at[path[^1]] = Another(at[path[^1]]!, member);
        Assert.NotEqual(Id(CompleteBuild.Json), Id(changed));
    }

    [Fact]
    public void Its_schema_takes_it() => Assert.Empty(ContractSchemas.Faults("Build", CompleteBuild.Json));

    [Fact]
    public async Task It_is_answered_whatever_charges_it()
    {
        foreach (JsonNode build in new[] { CompleteBuild.WithAlternator, CompleteBuild.WithConverter })
        {
            Answer answer = await service.Post(build.ToJsonString());
            Assert.True(answer.Status == 200, answer.Text);
            Assert.Empty(ContractSchemas.Faults("Assessment", answer.Json));
        }
    }

    private static string Id(JsonNode build) =>
        AssessmentIdentity.Of(BuildMapping.ToEngine(build.Deserialize(AnswerJson.Shapes.Build)!), RulesetLibrary.Newest);

    private static JsonNode Another(JsonNode value, PropertyInfo member) => value.GetValueKind() switch
    {
        JsonValueKind.True => false,
        JsonValueKind.False => true,
        JsonValueKind.Number => (double)value + 1 is var more && member.PropertyType == typeof(int?) ? (int)more : more,
        _ when EnumOf(member) is { } words => AnotherWord(words, (string)value!),
        _ => char.IsDigit(((string)value!)[0]) ? AnotherDigit((string)value!) : (string)value! + "x",
    };

    private static string AnotherDigit(string text) => (text[0] == '9' ? '8' : (char)(text[0] + 1)) + text[1..];

    private static string AnotherWord(Type words, string word) => words.GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(field => field.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()!.Name)
        .First(other => other != word);

    private static Type? EnumOf(PropertyInfo member)
    {
        Type type = ItemOf(member.PropertyType);
        return type.IsEnum ? type : null;
    }

    private static IEnumerable<PropertyInfo> LeavesOf(Type type) => type.GetProperties().SelectMany(
        member => IsPartOfBuild(ItemOf(member.PropertyType)) ? LeavesOf(ItemOf(member.PropertyType)) : [member]);

    private static bool IsPartOfBuild(Type type) => type.Namespace == typeof(Build).Namespace;

    private static Type ItemOf(Type type) =>
        type != typeof(string) && typeof(IEnumerable).IsAssignableFrom(type) ? type.GetGenericArguments()[0]
        : Nullable.GetUnderlyingType(type) ?? type;
}
