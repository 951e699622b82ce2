using System.Text;
using System.Text.Json;
using Cablewright.Service.Json;
using CsCheck;

namespace Cablewright.Service.Tests.Json;

public sealed class HostileBodyTests
{
    private const string Good = """
        { "name": "Estate", "vehicle": { "chargingVoltage": "13.8 V" },
          "runs": [ { "id": "m\u00e4in", "length": "16 ft", "route": "engine-bay", "count": 2, "price": 4.10,
                      "fitted": false } ] }
        """;

    private static readonly byte[] GoodBytes = Encoding.UTF8.GetBytes(Good);

    [Fact]
    public void A_body_cut_short_anywhere_is_one_clear_fault()
    {
        for (int length = 0; length < GoodBytes.Length; length++)
        {
            Shaped<Sample> shaped = ShapeReader.Read(GoodBytes.AsMemory(0, length), SampleJson.Default.Sample);
            Assert.Equal(ShapeOutcome.NotJson, shaped.Outcome);
            Assert.Contains(
                length == 0 ? "empty" : "found the end of the text",
                Assert.Single(shaped.Faults).Detail,
                StringComparison.Ordinal);
        }
    }

    [Fact]
    public void No_bytes_make_the_reader_throw() => Gen.Byte.Array[0, 200].Sample(IsAnswered);

    [Fact]
    public void No_change_to_a_good_body_makes_the_reader_throw() =>
        Gen.Int[0, GoodBytes.Length - 1].Select(Gen.Byte).Array[1, 4].Sample(changes =>
        {
            byte[] body = [.. GoodBytes];
            foreach ((int at, byte value) in changes) body[at] = value;
            return IsAnswered(body);
        });

    [Fact]
    public void No_arrangement_of_JSON_pieces_makes_the_reader_throw()
    {
        Gen<string> pieces = Gen.OneOfConst(
            "{", "}", "[", "]", ",", ":", "\"", "\\", "\"vehicle\":", "\"runs\":", "\"name\":", "\"include\":", "\"id\":",
            "\"length\":", "{}", "[]", "null", "true", "1", "-0", "1e999", "\"\\ud800\"", "\"\\ud800\":", "\"cabin\"",
            "\"16 ft\"", "\n", " ", "//", "\u0001", "é", "\ufeff");
        pieces.Array[0, 25].Select(parts => Encoding.UTF8.GetBytes(string.Concat(parts))).Sample(IsAnswered);
    }

    /// <summary>Exactly one of a value and a list of faults; and the faults can be written as JSON.</summary>
    private static bool IsAnswered(byte[] body)
    {
        Shaped<Sample> shaped = ShapeReader.Read(body, SampleJson.Default.Sample);
        foreach (Service.Problems.Fault fault in shaped.Faults)
        {
            Assert.NotEmpty(JsonSerializer.Serialize(fault));
            Assert.True(fault.Detail.Length < 400, fault.Detail);
        }

        return (shaped.Value is null) == (shaped.Faults.Count > 0)
            && (shaped.Outcome == ShapeOutcome.Read) == (shaped.Value is not null);
    }
}
