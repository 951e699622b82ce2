using System.Text;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Tests.Json;

public sealed class ShapeReaderTests
{
    private const string Good = """
        { "name": "Estate", "vehicle": { "chargingVoltage": "13.8 V" },
          "runs": [ { "id": "main", "length": "16 ft", "route": "engine-bay", "count": 2, "price": 4.10, "fitted": false } ],
          "include": ["cabin"] }
        """;

    [Fact]
    public void A_right_body_is_read()
    {
        Shaped<Sample> shaped = Read(Good);

        Assert.Empty(shaped.Faults);
        Assert.Equal(ShapeOutcome.Read, shaped.Outcome);
        Assert.Equal("13.8 V", shaped.Value!.Vehicle.ChargingVoltage);
        Assert.Equal([SampleWord.Cabin], shaped.Value.Include!);
        Assert.Equal(
            new SampleRun
            {
                Id = "main",
                Length = "16 ft",
                Route = SampleWord.EngineBay,
                Count = 2,
                Price = 4.10,
                Fitted = false,
            },
            Assert.Single(shaped.Value.Runs));
    }

    [Fact]
    public void A_byte_order_mark_is_tolerated() => Assert.Equal(ShapeOutcome.Read, Read("\ufeff" + Good).Outcome);

    [Fact]
    public void A_name_written_with_escapes_is_the_same_name() =>
        Assert.Equal("x", Read("""{ "vehicle": {}, "n\u0061me": "x" }""").Value!.Name);

    [Theory]
    [InlineData("""{ "vehicle": {}, "runs": [ { "id": "a", "lenght": "16 ft", "length": "1 m" } ] }""",
        "/runs/0/lenght", ShapeCodes.UnknownMember, "\"lenght\" is not a member here; did you mean \"length\"?",
        "id, length, route, count, price, fitted")]
    [InlineData("""{ "vehicle": {}, "Name": "x" }""",
        "/Name", ShapeCodes.UnknownMember, "\"Name\" is not a member here; did you mean \"name\"?",
        "name, vehicle, runs, include")]
    [InlineData("""{ "vehicle": {}, "runCount": 1 }""",
        "/runCount", ShapeCodes.UnknownMember, "\"runCount\" is not a member here", "name, vehicle, runs, include")]
    [InlineData("""{ "vehicle": {}, "a/b~c": 1 }""",
        "/a~1b~0c", ShapeCodes.UnknownMember, "\"a/b~c\" is not a member here", "name, vehicle, runs, include")]
    [InlineData("""{ "vehicle": {}, "name": "a", "n\u0061me": "b" }""",
        "/name", ShapeCodes.DuplicateMember, "\"name\" is given more than once; keep one", null)]
    [InlineData("""{ "vehicle": {}, "name": null, "name": "x" }""",
        "/name", ShapeCodes.DuplicateMember, "\"name\" is given more than once; keep one", null)]
    [InlineData("""{ "vehicle": {}, "runs": null }""",
        "/runs", ShapeCodes.Null, "null is not accepted; expected an array", null)]
    [InlineData("""{ "vehicle": null }""", "/vehicle", ShapeCodes.Null, "null is not accepted; expected an object", null)]
    [InlineData("""{ "vehicle": {}, "include": [null] }""",
        "/include/0", ShapeCodes.Null, "null is not accepted; expected one of the words listed", "engine-bay, cabin")]
    [InlineData("""null""", "", ShapeCodes.Null, "null is not accepted; expected an object", null)]
    [InlineData("""[]""", "", ShapeCodes.WrongType, "expected an object, found an array", null)]
    [InlineData("""{ "vehicle": {}, "name": 7 }""", "/name", ShapeCodes.WrongType, "expected text, found a number", null)]
    [InlineData("""{ "vehicle": {}, "runs": {} }""", "/runs", ShapeCodes.WrongType, "expected an array, found an object", null)]
    [InlineData("""{ "vehicle": {}, "runs": [ { "id": "a", "length": "1 m", "fitted": "false" } ] }""",
        "/runs/0/fitted", ShapeCodes.WrongType, "expected true or false, found text", null)]
    [InlineData("""{ "vehicle": { "chargingVoltage": 13.8 } }""",
        "/vehicle/chargingVoltage", QuantityCodes.UnitMissing, "add a unit, for example \"13.8 V\"",
        "6 V to 60 V, for example \"13.8 V\"")]
    [InlineData("""{ "vehicle": { "chargingVoltage": 1e400 } }""",
        "/vehicle/chargingVoltage", QuantityCodes.UnitMissing, "add a unit, for example \"13.8 V\"",
        "6 V to 60 V, for example \"13.8 V\"")]
    [InlineData("""{ "vehicle": { "chargingVoltage": true } }""",
        "/vehicle/chargingVoltage", ShapeCodes.WrongType, "expected a quantity with its unit, as text, found true or false",
        "6 V to 60 V, for example \"13.8 V\"")]
    [InlineData("""{ }""", "/vehicle", ShapeCodes.MissingMember, "\"vehicle\" is missing; expected an object", null)]
    [InlineData("""{ "vehicle": {}, "runs": [ { "id": "a" } ] }""",
        "/runs/0/length", ShapeCodes.MissingMember, "\"length\" is missing; expected a quantity with its unit, as text",
        "0.1 m to 30 m, for example \"16 ft\"")]
    [InlineData("""{ "vehicle": {}, "include": ["Cabin"] }""",
        "/include/0", ShapeCodes.UnknownWord, "\"Cabin\" is not a word accepted here; did you mean \"cabin\"?",
        "engine-bay, cabin")]
    [InlineData("""{ "vehicle": {}, "include": ["0"] }""",
        "/include/0", ShapeCodes.UnknownWord, "\"0\" is not a word accepted here", "engine-bay, cabin")]
    [InlineData("""{ "vehicle": {}, "include": [1] }""",
        "/include/0", ShapeCodes.WrongType, "expected one of the words listed, found a number", "engine-bay, cabin")]
    [InlineData("""{ "vehicle": {}, "runs": [ { "id": "a", "length": "1 m", "count": 1.5 } ] }""",
        "/runs/0/count", ShapeCodes.NotWhole, "expected a whole number, written with digits only", null)]
    [InlineData("""{ "vehicle": {}, "runs": [ { "id": "a", "length": "1 m", "count": 99999999999 } ] }""",
        "/runs/0/count", ShapeCodes.NotWhole, "expected a whole number, written with digits only", null)]
    [InlineData("""{ "vehicle": {}, "runs": [ { "id": "a", "length": "1 m", "price": 1e999 } ] }""",
        "/runs/0/price", ShapeCodes.NumberTooLarge, "the number is too large", null)]
    [InlineData("""{ "vehicle": {}, "name": "\ud800" }""",
        "/name", ShapeCodes.NotText, "the text holds half of a surrogate pair, which is no character", null)]
    [InlineData("""{ "vehicle": {}, "\ud800": 1 }""",
        "/\\ud800", ShapeCodes.UnknownMember, "is not a member here", "name, vehicle, runs, include")]
    public void A_fault_of_the_shape_says_where_why_and_what_is_right(
        string body, string pointer, string code, string detail, string? accepted)
    {
        Shaped<Sample> shaped = Read(body);

        Assert.Equal(ShapeOutcome.WrongShape, shaped.Outcome);
        Assert.Null(shaped.Value);
        Fault fault = Assert.Single(shaped.Faults);
        Assert.Equal((pointer, code, accepted), (fault.Pointer, fault.Code, fault.Accepted));
        Assert.Contains(detail, fault.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void A_null_says_the_same_as_leaving_the_member_out() => Assert.Equivalent(
        Read("""{ "vehicle": {}, "runs": [ { "id": "a", "length": "1 m" } ] }""").Value,
        Read(
            """
            {
              "name": null, "vehicle": { "chargingVoltage": null }, "include": null,
              "runs": [ { "id": "a", "length": "1 m", "route": null, "count": null, "price": null } ]
            }
            """).Value,
        strict: true);

    [Fact]
    public void All_faults_are_listed_at_once_quantities_included()
    {
        Shaped<Sample> shaped = Read(
            """{ "nmae": 1, "runs": [ { "id": 5, "length": "16" }, { "length": "99 ft", "route": "roof" } ] }""");

        Assert.Equal(
            [
                ("/nmae", ShapeCodes.UnknownMember),
                ("/runs/0/id", ShapeCodes.WrongType),
                ("/runs/0/length", QuantityCodes.UnitMissing),
                ("/runs/1/length", QuantityCodes.TooLarge),
                ("/runs/1/route", ShapeCodes.UnknownWord),
                ("/runs/1/id", ShapeCodes.MissingMember),
                ("/vehicle", ShapeCodes.MissingMember),
            ],
            shaped.Faults.Select(fault => (fault.Pointer, fault.Code)));
    }

    [Fact]
    public void A_wrong_quantity_in_a_right_shape_is_left_to_the_validator() =>
        Assert.Equal("16", Read("""{ "vehicle": { "chargingVoltage": "16" } }""").Value!.Vehicle.ChargingVoltage);

    [Theory]
    [InlineData("16", "16")]
    [InlineData("true", "true")]
    [InlineData("null", null)]
    [InlineData("[1, 2]", "\"[1, 2]\"")]
    public void What_was_sent_is_shown(string sent, string? shown) =>
        Assert.Equal(shown, Assert.Single(Read($$"""{ "vehicle": {}, "include": [{{sent}}] }""").Faults).Value?.ToJsonString());

    [Fact]
    public void A_long_value_is_shown_short_and_no_character_is_cut_in_half()
    {
        string text = new string('a', 59) + "\U0001F50B" + new string('b', 5000);
        Assert.Equal(
            new string('a', 59) + "…",
            Assert.Single(Read($$"""{ "vehicle": {}, "nmae": "{{text}}" }""").Faults).Value!.GetValue<string>());
    }

    [Fact]
    public void A_hundred_faults_are_all_listed() => Assert.Equal(ShapeCodes.WrongType, Read(Faulty(100)).Faults[99].Code);

    [Fact]
    public void Beyond_a_hundred_faults_the_last_entry_says_so()
    {
        IReadOnlyList<Fault> faults = Read(Faulty(101)).Faults;

        Assert.Equal(101, faults.Count);
        Assert.Equal("/include/99", faults[99].Pointer);
        Assert.Equal(new Fault("", ShapeCodes.More, "there are more faults than the 100 listed"), faults[100]);
    }

    [Fact]
    public void A_type_that_sends_enumerations_as_numbers_is_refused_before_any_body_is() =>
        Assert.Throws<NotSupportedException>(() => ShapeReader.Prepare(SampleJson.Default.Unfit));

    private static string Faulty(int faults) =>
        $$"""{ "vehicle": {}, "include": [{{string.Join(',', Enumerable.Repeat("7", faults))}}] }""";

    private static Shaped<Sample> Read(string body) => ShapeReader.Read(Encoding.UTF8.GetBytes(body), SampleJson.Default.Sample);
}
