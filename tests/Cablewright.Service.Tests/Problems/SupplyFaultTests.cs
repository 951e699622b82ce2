using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Problems;

/// <summary>What can be wrong with what a build says of its supply.</summary>
public class SupplyFaultTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData("vehicle", """{ "alternator": { "pulleyRatio": "2.7" } }""", "/alternator/pulleyRatio", "value.wrong-type")]
    [InlineData("vehicle", """{ "alternator": { "idleSpeed": 800 } }""", "/alternator/idleSpeed", "quantity.unit-missing")]
    [InlineData("vehicle", """{ "alternator": { "outputPoints": [ { "speed": "2000 rpm" } ] } }""",
        "/alternator/outputPoints/0/current", "member.missing")]
    [InlineData("vehicle", """{ "converter": { "power": "1800 W" } }""", "/converter/power", "member.unknown")]
    [InlineData("vehicle", """{ "capacitors": [ { "at": "bass" } ] }""", "/capacitors/0/capacitance", "member.missing")]
    [InlineData("vehicle", """{ "capacitors": [ { "capacitance": "1 F" } ] }""", "/capacitors/0/at", "member.missing")]
    [InlineData("vehicle", """{ "batteries": [ { "id": "starter", "ratingTime": 20 } ] }""",
        "/batteries/0/ratingTime", "quantity.unit-missing")]
    [InlineData("vehicle", """{ "batteries": [ { "id": "starter", "polarisation": [ { "resistance": "3 mOhm" } ] } ] }""",
        "/batteries/0/polarisation/0/timeConstant", "member.missing")]
    [InlineData("runs/0/isolator", """{ "ratedCurrent": "40 A" }""", "/kind", "member.missing")]
    [InlineData("runs/0/isolator", """{ "kind": "dcdc-charger" }""", "/kind", "word.unknown")]
    public async Task A_fault_of_shape_names_its_place(string at, string value, string pointer, string code)
    {
        Answer answer = await Post(at, value);
        ProblemAssertions.IsProblem(answer, 400, "request.not-understood");
        Assert.Equal([($"/{at}{pointer}", code)], answer.Faults);
    }

    [Theory]
    [InlineData("""{ "alternator": { "pulleyRatio": 0.99 } }""", "/alternator/pulleyRatio", "number.out-of-range")]
    [InlineData("""{ "alternator": { "pulleyRatio": 6.01 } }""", "/alternator/pulleyRatio", "number.out-of-range")]
    [InlineData("""{ "alternator": { "idleSpeed": "800 Hz" } }""", "/alternator/idleSpeed", "quantity.unit-unknown")]
    [InlineData("""{ "alternator": { "lowSpeedCurrent": "3 kA" } }""", "/alternator/lowSpeedCurrent", "quantity.too-large")]
    [InlineData("""{ "alternator": { "outputPoints": [ { "speed": "2000 rpm", "current": "80 A" } ] } }""",
        "/alternator/outputPoints", "items.too-few")]
    [InlineData("""
        { "alternator": { "outputPoints": [
          { "speed": "2000 rpm", "current": "80 A" }, { "speed": "2000 1/min", "current": "90 A" } ] } }
        """, "/alternator/outputPoints/1/speed", "alternator.points-out-of-order")]
    [InlineData("""
        { "alternator": { "outputPoints": [
          { "speed": "2000 rpm", "current": "80 A" }, { "speed": "fast", "current": "90 A" } ] } }
        """, "/alternator/outputPoints/1/speed", "quantity.not-a-number")]
    [InlineData("""{ "converter": {} }""", "/converter", "converter.rating-missing")]
    [InlineData("""{ "converter": { "ratedCurrent": "130 A", "ratedPower": "1.8 kW" } }""",
        "/converter/ratedPower", "converter.rating-twice")]
    [InlineData("""{ "converter": { "ratedCurrent": "130 A", "at": "two words" } }""", "/converter/at", "id.malformed")]
    [InlineData("""{ "standbyLoad": "2 W" }""", "/standbyLoad", "quantity.wrong-unit")]
    [InlineData("""{ "capacitors": [ { "at": "bass", "capacitance": "0.9 mF" } ] }""",
        "/capacitors/0/capacitance", "quantity.too-small")]
    [InlineData("""{ "batteries": [ { "id": "starter", "peukertExponent": 0.9 } ] }""",
        "/batteries/0/peukertExponent", "number.out-of-range")]
    [InlineData("""{ "batteries": [ { "id": "starter", "stateOfCharge": "101 %" } ] }""",
        "/batteries/0/stateOfCharge", "quantity.too-large")]
    [InlineData("""{ "batteries": [ { "id": "starter", "reserveCapacity": "115 Ah" } ] }""",
        "/batteries/0/reserveCapacity", "quantity.wrong-unit")]
    [InlineData("""
        { "batteries": [ { "id": "starter", "polarisation": [ { "resistance": "3 mOhm", "timeConstant": "0.1 ms" } ] } ] }
        """, "/batteries/0/polarisation/0/timeConstant", "quantity.too-small")]
    public async Task A_fault_of_the_vehicles_content_names_its_place(string vehicle, string pointer, string code) =>
        AssertContains(await Post("vehicle", vehicle), "/vehicle" + pointer, code);

    [Theory]
    [InlineData("""
        [ { "shareOfRating": "200 %", "fastest": "1 s", "slowest": "15 s" },
          { "shareOfRating": "200 %", "fastest": "1 s", "slowest": "9 s" } ]
        """, "/1/shareOfRating", "fuse.opening-times-out-of-order")]
    [InlineData("""[ { "shareOfRating": "much", "fastest": "1 s", "slowest": "15 s" } ]""",
        "/0/shareOfRating", "quantity.not-a-number")]
    [InlineData("""[ { "shareOfRating": "200 %", "fastest": "1 s" } ]""", "", "fuse.opening-times-without-end")]
    [InlineData("[]", "", "fuse.opening-times-without-end")]
    public async Task A_fault_of_a_fuses_own_curve_names_its_place(string points, string pointer, string code) =>
        AssertContains(
            await Post("runs/0/fuse", $$"""{ "rating": "60 A", "openingTimes": {{points}} }"""),
            "/runs/0/fuse/openingTimes" + pointer, code);

    [Theory]
    [InlineData("""{ "kind": "relay", "forwardVoltage": "0.7 V" }""", "/forwardVoltage", "isolator.member-foreign", "diode")]
    [InlineData("""{ "kind": "diode", "contactResistance": "1 mOhm" }""",
        "/contactResistance", "isolator.member-foreign", "relay")]
    [InlineData("""{ "kind": "relay", "outputVoltage": "14 V" }""", "/outputVoltage", "isolator.member-foreign", "dc-dc-charger")]
    [InlineData("""{ "kind": "diode", "efficiency": "90 %" }""", "/efficiency", "isolator.member-foreign", "dc-dc-charger")]
    [InlineData("""{ "kind": "dc-dc-charger", "ratedCurrent": "40 A", "forwardVoltage": "0.7 V" }""",
        "/forwardVoltage", "isolator.member-foreign", "diode")]
    [InlineData("""{ "kind": "dc-dc-charger" }""", "", "isolator.rating-missing", "ratedCurrent")]
    [InlineData("""{ "kind": "diode", "forwardVoltage": "3 V" }""", "/forwardVoltage", "quantity.too-large", "2 V")]
    public async Task An_isolator_has_the_figures_of_its_kind(string isolator, string pointer, string code, string accepted)
    {
        Answer answer = await Post("runs/0/isolator", isolator);
        AssertContains(answer, "/runs/0/isolator" + pointer, code);
        Assert.Contains(
            accepted, (string)answer.Json["errors"]!.AsArray().Single(error => (string)error!["code"]! == code)!["accepted"]!);
    }

    [Fact]
    public async Task The_time_with_the_engine_off_is_a_time() => AssertContains(
        await Post("limits", """{ "engineOffTime": "70 Ah" }"""), "/limits/engineOffTime", "quantity.wrong-unit");

    private static void AssertContains(Answer answer, string pointer, string code)
    {
        ProblemAssertions.IsProblem(answer, 422, "build.faulty");
        Assert.Contains((pointer, code), answer.Faults);
        Assert.Single(answer.Faults, fault => fault.Pointer.StartsWith(pointer, StringComparison.Ordinal));
    }

    private Task<Answer> Post(string place, string value) => service.Post(Builds.With(build =>
    {
        const string FirstRun = "runs/0/";
        if (place.StartsWith(FirstRun, StringComparison.Ordinal))
            build["runs"]![0]![place[FirstRun.Length..]] = JsonNode.Parse(value);
        else build[place] = JsonNode.Parse(value);
    }));
}
