using System.Globalization;
using Cablewright.Contract.Quantities;
using Cablewright.Service.Quantities;
using CsCheck;

namespace Cablewright.Service.Tests.Quantities;

public sealed class QuantityReadingTests
{
    [Theory]
    [InlineData(nameof(Wide.Length), "16 ft", 4.8768)]
    [InlineData(nameof(Wide.Length), "16ft", 4.8768)]
    [InlineData(nameof(Wide.Length), "  16   ft  ", 4.8768)]
    [InlineData(nameof(Wide.Length), "16\u00a0ft", 4.8768)]
    [InlineData(nameof(Wide.Length), "3 ft", 0.9144)]
    [InlineData(nameof(Wide.Length), "16 ft 6 in", 5.0292)]
    [InlineData(nameof(Wide.Length), "16' 6\"", 5.0292)]
    [InlineData(nameof(Wide.Length), "16'6\"", 5.0292)]
    [InlineData(nameof(Wide.Length), "16\u20326\u2033", 5.0292)]
    [InlineData(nameof(Wide.Length), "16\u2019 6\u201d", 5.0292)]
    [InlineData(nameof(Wide.Length), "15'", 4.572)]
    [InlineData(nameof(Wide.Length), "15 feet", 4.572)]
    [InlineData(nameof(Wide.Length), "18 inches", 0.4572)]
    [InlineData(nameof(Wide.Length), "5 metres", 5)]
    [InlineData(nameof(Wide.Power), "300 watts", 300)]
    [InlineData(nameof(Wide.Power), "300 W RMS", 300)]
    [InlineData(nameof(Wide.Power), "300W rms", 300)]
    [InlineData(nameof(Wide.Current), "60 amps", 60)]
    [InlineData(nameof(Wide.Voltage), "14.4 volts", 14.4)]
    [InlineData(nameof(Wide.Length), "4.9 m", 4.9)]
    [InlineData(nameof(Wide.Length), "0 in", 0)]
    [InlineData(nameof(Wide.Power), "1.2 kW", 1200)]
    [InlineData(nameof(Wide.Ratio), "80 %", 0.8)]
    [InlineData(nameof(Wide.Ratio), "80%", 0.8)]
    [InlineData(nameof(Wide.Voltage), "13.8 V", 13.8)]
    [InlineData(nameof(Wide.Resistance), "1 mOhm", 0.001)]
    [InlineData(nameof(Wide.Resistance), "0.5 mΩ", 0.0005)]
    [InlineData(nameof(Wide.Resistance), "1.1 mOhm", 0.0011)]
    [InlineData(nameof(Wide.Temperature), "105 C", 105)]
    [InlineData(nameof(Wide.Temperature), "105 °C", 105)]
    [InlineData(nameof(Wide.Temperature), "212 F", 100)]
    [InlineData(nameof(Wide.Temperature), "-40 F", -40)]
    [InlineData(nameof(Wide.Temperature), "\u221240 C", -40)]
    [InlineData(nameof(Wide.Temperature), "273.15 K", 0)]
    [InlineData(nameof(Wide.Capacity), "70 Ah", 70)]
    [InlineData(nameof(Wide.Level), "9 dB", 9)]
    [InlineData(nameof(Wide.Duration), "2 h", 7200)]
    [InlineData(nameof(Wide.Duration), "115 min", 6900)]
    [InlineData(nameof(Wide.Duration), "0.1 s", 0.1)]
    [InlineData(nameof(Wide.Duration), "250 ms", 0.25)]
    [InlineData(nameof(Wide.RotationalSpeed), "800 rpm", 800)]
    [InlineData(nameof(Wide.RotationalSpeed), "6000 1/min", 6000)]
    [InlineData(nameof(Wide.Capacitance), "1 F", 1)]
    [InlineData(nameof(Wide.Capacitance), "500 mF", 0.5)]
    [InlineData(nameof(Wide.Capacitance), "4700 uF", 0.0047)]
    [InlineData(nameof(Wide.Capacitance), "4700 \u00b5F", 0.0047)]
    public void Plain_quantities_are_read_to_the_last_bit(string member, string text, double expected) =>
        Assert.Equal(new QuantityReading(Enum.Parse<QuantityKind>(member), expected, null), Read(member, text));

    /// <summary>As programs print doubles: 90 · 0.3048 and 0.1 + 0.2.</summary>
    [Theory]
    [InlineData("27.432000000000002 m", 27.432)]
    [InlineData("0.30000000000000004 m", 0.3)]
    public void What_a_program_prints_of_a_double_is_read(string text, double expected) =>
        Assert.Equal(expected, Read(nameof(Wide.Length), text).Value, 1e-14);

    [Theory]
    [InlineData("", QuantityCodes.Empty, "the text is empty; expected a length")]
    [InlineData(" \t ", QuantityCodes.Empty, "the text is empty; expected a length")]
    [InlineData("16", QuantityCodes.UnitMissing, "add a unit, for example \"16 ft\"")]
    [InlineData("25", QuantityCodes.UnitMissing, "add a unit, for example \"25 ft\"")]
    [InlineData("16 ft 6", QuantityCodes.UnitMissing, "add a unit, for example \"6 ft\"")]
    [InlineData("1,000 m", QuantityCodes.Comma, "a comma is read as thousands")]
    [InlineData("4,9 m", QuantityCodes.Comma, "a comma is read as thousands")]
    [InlineData("16 FT", QuantityCodes.UnitUnknown, "\"FT\" is not a unit known here; did you mean \"ft\"? Capitals matter")]
    [InlineData("16 FEET", QuantityCodes.UnitUnknown, "did you mean \"ft\"?")]
    [InlineData("16 ft6 in", QuantityCodes.UnitUnknown, "\"ft6\" is not a unit known here")]
    [InlineData("5 miles", QuantityCodes.UnitUnknown, "write a length in mm, cm, m, in, ft, yd")]
    [InlineData("6\" 16'", QuantityCodes.NotASum, "\"16'\" cannot be added")]
    [InlineData("16 furlongs", QuantityCodes.UnitUnknown, "write a length in mm, cm, m, in, ft, yd")]
    [InlineData("25 mm2", QuantityCodes.UnitUnknown, "\"mm2\" is not a unit known here")]
    [InlineData("13.8 V", QuantityCodes.WrongUnit, "\"13.8 V\" is a voltage; expected a length")]
    [InlineData("long", QuantityCodes.NotANumber, "\"long\" does not start with a plain number")]
    [InlineData("NaN m", QuantityCodes.NotANumber, "\"NaN m\" does not start")]
    [InlineData("Infinity m", QuantityCodes.NotANumber, "\"Infinity m\" does not start")]
    [InlineData("1e3 m", QuantityCodes.NotANumber, "\"1e3\" does not start")]
    [InlineData("1E+3m", QuantityCodes.NotANumber, "\"1E+3m\" does not start")]
    [InlineData("1/2 m", QuantityCodes.NotANumber, "\"1/2\" does not start")]
    [InlineData("1 000 m", QuantityCodes.NotANumber, "\"1 000\" does not start")]
    [InlineData("1.2.3 m", QuantityCodes.NotANumber, "\"1.2.3\" does not start")]
    [InlineData(".5 m", QuantityCodes.NotANumber, "a decimal point with a digit on each side")]
    [InlineData("5. m", QuantityCodes.NotANumber, "a decimal point with a digit on each side")]
    [InlineData("+5 m", QuantityCodes.NotANumber, "\"+5 m\" does not start")]
    [InlineData("1234567890123456789 m", QuantityCodes.NotANumber, "at most 18 digits")]
    [InlineData("٣ m", QuantityCodes.NotANumber, "\"٣ m\" does not start")]
    [InlineData("-5 m", QuantityCodes.Negative, "\"-5 m\": only a temperature may be negative")]
    [InlineData("6 in 16 ft", QuantityCodes.NotASum, "\"16 ft\" cannot be added")]
    [InlineData("16 ft 6 V", QuantityCodes.NotASum, "\"6 V\" cannot be added")]
    [InlineData("0.0999 m", QuantityCodes.TooSmall, "\"0.0999 m\" is less than 0.1 m, the smallest accepted here")]
    [InlineData("30.001 m", QuantityCodes.TooLarge, "\"30.001 m\" is more than 30 m, the largest accepted here")]
    [InlineData("999999999999999 m", QuantityCodes.TooLarge, "more than 30 m")]
    [InlineData("5 m                                      x", QuantityCodes.TooLong, "longer than 40 characters")]
    public void A_refusal_says_why_and_what_is_right(string text, string code, string detail)
    {
        QuantityFault fault = Read(nameof(Wide.RunLength), text).Fault!;

        Assert.Equal(code, fault.Code);
        Assert.Contains(detail, fault.Detail, StringComparison.Ordinal);
        Assert.Equal("0.1 m to 30 m, for example \"16 ft\"", fault.Accepted);
    }

    [Theory]
    [InlineData(nameof(Wide.Power), "1 KW", "kW")]
    [InlineData(nameof(Wide.Power), "1 MW", "mW")]
    [InlineData(nameof(Wide.Resistance), "1 MOhm", "mOhm")]
    [InlineData(nameof(Wide.Voltage), "12 v", "V")]
    [InlineData(nameof(Wide.Capacity), "70 AH", "Ah")]
    [InlineData(nameof(Wide.RotationalSpeed), "800 RPM", "rpm")]
    [InlineData(nameof(Wide.Duration), "2 hours", "h")]
    [InlineData(nameof(Wide.Capacitance), "1 Farad", "F")]
    public void Capitals_matter_and_the_right_ones_are_shown(string member, string text, string right) =>
        Assert.Contains($"did you mean \"{right}\"?", Read(member, text).Fault!.Detail, StringComparison.Ordinal);

    [Theory]
    [InlineData(nameof(Wide.Temperature), QuantityKind.Temperature, 100)]
    [InlineData(nameof(Wide.Capacitance), QuantityKind.Capacitance, 212)]
    public void A_letter_that_two_kinds_share_means_the_one_that_is_wanted(string member, QuantityKind kind, double expected) =>
        Assert.Equal(new QuantityReading(kind, expected, null), Read(member, "212 F"));

    [Theory]
    [InlineData(nameof(Wide.Duration), "70 Ah", "\"70 Ah\" is a capacity; expected a time")]
    [InlineData(nameof(Wide.Length), "2 h", "\"2 h\" is a time; expected a length")]
    [InlineData(nameof(Wide.Length), "800 rpm", "\"800 rpm\" is a rotational speed; expected a length")]
    [InlineData(nameof(Wide.Length), "1 mF", "\"1 mF\" is a capacitance; expected a length")]
    [InlineData(nameof(Wide.Duration), "1 h 30 min", "\"30 min\" cannot be added")]
    public void A_unit_of_another_kind_is_refused_by_its_name(string member, string text, string detail) =>
        Assert.Contains(detail, Read(member, text).Fault!.Detail, StringComparison.Ordinal);

    [Theory]
    [InlineData("0.1 m")]
    [InlineData("30 m")]
    [InlineData("30000 mm")]
    public void Both_ends_of_a_range_belong_to_it(string text) => Assert.Null(Read(nameof(Wide.RunLength), text).Fault);

    [Fact]
    public void A_member_of_two_kinds_takes_either_in_its_own_range()
    {
        Assert.Equal(new QuantityReading(QuantityKind.Ratio, 0.03, null), Read(nameof(Wide.MaxDrop), "3 %"));
        Assert.Equal(new QuantityReading(QuantityKind.Voltage, 0.5, null), Read(nameof(Wide.MaxDrop), "500 mV"));
        Assert.Equal(QuantityCodes.TooLarge, Read(nameof(Wide.MaxDrop), "7 V").Fault!.Code);
        QuantityFault fault = Read(nameof(Wide.MaxDrop), "3 ft").Fault!;
        Assert.Equal("\"3 ft\" is a length; expected a percentage or a voltage", fault.Detail);
        Assert.Equal("0.1 % to 50 %, for example \"3 %\"; or 0.01 V to 6 V, for example \"0.5 V\"", fault.Accepted);
    }

    [Fact]
    public void A_wrong_attribute_is_found_when_its_rule_is_made()
    {
        Assert.Throws<ArgumentException>(() => QuantityRule.Of<Misdeclared>(nameof(Misdeclared.WrongKind)));
        Assert.Throws<ArgumentException>(() => QuantityRule.Of<Misdeclared>(nameof(Misdeclared.ExampleOutside)));
        Assert.Throws<ArgumentException>(() => QuantityRule.Of<Misdeclared>(nameof(Misdeclared.Plain)));
    }

    /// <summary>
    /// Source: IEEE 754 round-to-nearest as done by <see cref="double.Parse(string)"/> on the product written out in decimal.
    /// </summary>
    [Fact]
    public void Feet_are_the_double_nearest_to_the_true_product() =>
        Gen.Int[0, 999_999_999].Select(Gen.Int[0, 6]).Sample((digits, places) =>
        {
            decimal feet = new(digits, 0, 0, false, (byte)places);
            double expected = double.Parse((feet * 0.3048m).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
            string text = string.Create(CultureInfo.InvariantCulture, $"{feet} ft");
            return Read(nameof(Wide.Length), text) is { Value: var value } reading
                && (reading.Fault is { Code: QuantityCodes.TooLarge } || value == expected);
        });

    [Fact]
    public void No_text_crashes_the_reader()
    {
        Gen<string> pieces = Gen.OneOfConst(
            "1", "0", "16", "999999999999999", ".", ",", "-", "\u2212", " ", "\t", "ft", "in", "V", "mΩ", "°C", "%", "e", "E+",
            "/", "'", "\"",
            "NaN", "\ud800", "\udc00", "\0", "\u0301", "½", "٣", "KW", "mm2");
        Gen<string> text = Gen.OneOf(pieces.Array[0, 12].Select(string.Concat), Gen.String[0, 60]);
        text.Select(Gen.OneOfConst(nameof(Wide.Length), nameof(Wide.Temperature), nameof(Wide.MaxDrop)))
            .Sample((written, member) =>
            {
                QuantityReading reading = Read(member, written);
                return double.IsFinite(reading.Value) && (reading.Fault is null || reading.Fault.Detail.Length < 300);
            });
    }

    [Fact]
    public void Reading_a_good_text_allocates_nothing()
    {
        QuantityRule rule = QuantityRule.Of<Wide>(nameof(Wide.Length));
        double total = rule.Read("16 ft 6 in").Value;
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++) total += rule.Read("16 ft 6 in").Value;
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.Equal(5.0292 * 1001, total, 6);
    }

    private static QuantityReading Read(string member, string text) => QuantityRule.Of<Wide>(member).Read(text);

    private sealed record Misdeclared
    {
        [Quantity(QuantityKind.Length, "1 V", "2 m", "1 m")]
        public string? WrongKind { get; init; }

        [Quantity(QuantityKind.Length, "1 m", "2 m", "3 m")]
        public string? ExampleOutside { get; init; }

        public string? Plain { get; init; }
    }

    /// <summary>The unit of another kind is refused by name, whatever the kind that is wanted.</summary>
    [Fact]
    public void Every_kind_has_a_name_to_refuse_with() => Assert.All(
        Enum.GetValues<QuantityKind>(),
        kind => Assert.NotEmpty(
            QuantityRule.Of<Wide>(kind.ToString()).Read(kind is QuantityKind.Mass ? "7 V" : "7 kg").Fault!.Detail));
}
