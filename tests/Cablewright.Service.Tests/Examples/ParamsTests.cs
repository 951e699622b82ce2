using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Cablewright.Service.Tests.Fuzz;
using Cablewright.Service.Tests.Judgement;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Examples;

/// <summary>No number stands in a sentence that is not among its params: another sentence can say as much.</summary>
/// <remarks>
/// What of a sentence is not a param that is a text is searched for numbers; each has to be a param that is a number, to three
/// significant digits, in one of the units in which it may be written.
/// </remarks>
public partial class ParamsTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    /// <summary>Three significant digits.</summary>
    private const double Shown = 0.0051;

    private static readonly string[] Sentences = ["message", "value", "reason", "question", "why"];

    public static TheoryData<string> Names => [.. ExampleFiles.Names];

    public static TheoryData<string> Jobs => PanelTests.Jobs;

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Of_an_example_every_number_is_among_the_params(string name) =>
        Assert.Empty(Unknown(JsonNode.Parse(await File.ReadAllTextAsync(ExampleFiles.AnswerPath(name)))!));

    [Theory]
    [MemberData(nameof(Jobs))]
    public async Task Of_a_job_of_the_panel_too(string name) =>
        Assert.Empty(Unknown((await service.Post(await PanelTests.BuildOf(name))).Json));

    [Theory]
    [InlineData("""{ "message": "It carries 17 ft", "params": { "metres": 5.18 } }""", true)]
    [InlineData("""{ "message": "It carries 18 ft", "params": { "metres": 5.18 } }""", false)]
    [InlineData("""{ "message": "Run \"7\" is 4 AWG copper", "params": { "run": "7", "conductor": "4 AWG copper" } }""", true)]
    [InlineData("""{ "message": "Run \"7\" is 4 AWG copper", "params": { "run": "7" } }""", false)]
    [InlineData("""{ "message": "It loses 3.5 %", "params": { "share": 0.035 } }""", true)]
    [InlineData("""{ "message": "It loses 3.5 %" }""", false)]
    [InlineData("""{ "message": "Lay 2, and fit 80 A.", "params": { "steps": [{ "count": 2 }, { "amps": 80 }] } }""", true)]
    public void A_number_that_is_not_among_them_is_found(string finding, bool isKnown) =>
        Assert.Equal(isKnown, !Unknown(new JsonArray(JsonNode.Parse(finding))).Any());

    /// <summary>Each number of a sentence that its params do not have, with the sentence.</summary>
    private static IEnumerable<string> Unknown(JsonNode answer) =>
        from said in JsonParts.Below(answer).OfType<JsonObject>()
        where said["message"] is not null || said["reason"] is not null || said["question"] is not null
        let values = said["params"] is { } named ? JsonParts.Below(named).OfType<JsonValue>().ToArray() : []
        from member in Sentences
        where said[member] is JsonValue
        let sentence = (string)said[member]!
        from Match number in Number().Matches(WithoutTexts(sentence, values))
        let shown = double.Parse(number.Value, CultureInfo.InvariantCulture)
        where !values.Where(IsNumber).Any(value => Matches((double)value, shown))
        select $"{number.Value} in: {sentence} {said["params"]?.ToJsonString()}";

    private static string WithoutTexts(string sentence, IEnumerable<JsonValue> values) => values
        .Where(value => !IsNumber(value)).Select(value => (string)value!).Where(text => text.Length > 0)
        .OrderByDescending(text => text.Length)
        .Aggregate(sentence, (rest, text) => rest.Replace(text, "", StringComparison.OrdinalIgnoreCase));

    private static bool IsNumber(JsonValue value) => value.GetValueKind() is JsonValueKind.Number;

    /// <summary>As it is, in percent or thousandths, in minutes or hours, in feet, inches or Fahrenheit.</summary>
    private static bool Matches(double value, double shown) => new[]
    {
        value, value * 100, value * 1000, value / 60, value / 0.3048, value / 0.0254, value * 9 / 5 + 32, value * 9 / 5,
    }.Any(figure => Math.Abs(figure - shown) <= Shown * Math.Abs(figure) + 1e-9);

    [GeneratedRegex(@"(?<![\w.])-?\d+(?:\.\d+)?")]
    private static partial Regex Number();
}
