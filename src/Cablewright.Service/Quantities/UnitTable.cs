using System.Collections.Frozen;
using System.Globalization;
using Cablewright.Contract.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace Cablewright.Service.Quantities;

/// <summary>The units that callers may write: abbreviations and factors from UnitsNet, the choice of units ours.</summary>
internal static class UnitTable
{
    /// <summary>For each kind the unit that it is read into, and the units in which it may be written.</summary>
    private static readonly (QuantityKind Kind, Enum Into, Enum[] From)[] Chosen =
    [
        (QuantityKind.Length, LengthUnit.Meter,
            [LengthUnit.Millimeter, LengthUnit.Centimeter, LengthUnit.Meter, LengthUnit.Inch, LengthUnit.Foot, LengthUnit.Yard]),
        (QuantityKind.Mass, MassUnit.Kilogram, [MassUnit.Gram, MassUnit.Kilogram, MassUnit.Ounce, MassUnit.Pound]),
        (QuantityKind.Voltage, ElectricPotentialUnit.Volt, [ElectricPotentialUnit.Millivolt, ElectricPotentialUnit.Volt]),
        (QuantityKind.Current, ElectricCurrentUnit.Ampere,
            [ElectricCurrentUnit.Milliampere, ElectricCurrentUnit.Ampere, ElectricCurrentUnit.Kiloampere]),
        (QuantityKind.Power, PowerUnit.Watt, [PowerUnit.Milliwatt, PowerUnit.Watt, PowerUnit.Kilowatt]),
        (QuantityKind.Resistance, ElectricResistanceUnit.Ohm,
            [ElectricResistanceUnit.Microohm, ElectricResistanceUnit.Milliohm, ElectricResistanceUnit.Ohm]),
        (QuantityKind.Temperature, TemperatureUnit.DegreeCelsius,
            [TemperatureUnit.DegreeCelsius, TemperatureUnit.DegreeFahrenheit, TemperatureUnit.Kelvin]),
        (QuantityKind.TemperatureDifference, TemperatureDeltaUnit.Kelvin,
            [TemperatureDeltaUnit.Kelvin, TemperatureDeltaUnit.DegreeCelsius, TemperatureDeltaUnit.DegreeFahrenheit]),
        (QuantityKind.Ratio, RatioUnit.DecimalFraction, [RatioUnit.Percent]),
        (QuantityKind.Capacity, ElectricChargeUnit.AmpereHour,
            [ElectricChargeUnit.MilliampereHour, ElectricChargeUnit.AmpereHour]),
        (QuantityKind.Level, LevelUnit.Decibel, [LevelUnit.Decibel]),
        (QuantityKind.Duration, DurationUnit.Second,
            [DurationUnit.Millisecond, DurationUnit.Second, DurationUnit.Minute, DurationUnit.Hour]),
        (QuantityKind.RotationalSpeed, RotationalSpeedUnit.RevolutionPerMinute, [RotationalSpeedUnit.RevolutionPerMinute]),
        (QuantityKind.Capacitance, CapacitanceUnit.Farad,
            [CapacitanceUnit.Microfarad, CapacitanceUnit.Millifarad, CapacitanceUnit.Farad]),
    ];

    /// <summary>
    /// Spellings for keyboards without the sign, the second code point that Unicode has for µ and Ω, where the trade's own is
    /// not the first that UnitsNet has, and words as people type them.
    /// </summary>
    private static readonly Dictionary<Enum, string[]> Spellings = new()
    {
        [LengthUnit.Foot] = ["ft", "feet", "foot", "Feet", "'", "\u2019", "\u2032"],
        [LengthUnit.Inch] = ["in", "inch", "inches", "Inches", "\"", "\u201d", "\u2033"],
        [LengthUnit.Meter] = ["m", "metres", "metre", "meters", "meter"],
        [PowerUnit.Watt] = ["W", "watts", "watt", "Watts"],
        [ElectricCurrentUnit.Ampere] = ["A", "amps", "amp", "Amps", "amperes"],
        [ElectricPotentialUnit.Volt] = ["V", "volts", "volt", "Volts"],
        [TemperatureUnit.DegreeCelsius] = ["C", "°C", "℃"],
        [TemperatureUnit.DegreeFahrenheit] = ["F", "°F", "℉"],
        [TemperatureDeltaUnit.Kelvin] = ["K"],
        [TemperatureDeltaUnit.DegreeCelsius] = ["C", "°C", "℃"],
        [TemperatureDeltaUnit.DegreeFahrenheit] = ["F", "°F", "℉"],
        [ElectricResistanceUnit.Ohm] = ["Ohm", "ohm", "ohms", "Ohms", "Ω", "\u2126"],
        [ElectricResistanceUnit.Milliohm] = ["mOhm", "mohm", "mΩ", "m\u2126"],
        [ElectricResistanceUnit.Microohm] = ["uOhm", "uohm", "\u00b5Ω", "\u03bcΩ", "\u00b5\u2126", "\u03bc\u2126"],
        [ElectricChargeUnit.AmpereHour] = ["Ah"],
        [ElectricChargeUnit.MilliampereHour] = ["mAh"],
        [DurationUnit.Minute] = ["min"],
        [RotationalSpeedUnit.RevolutionPerMinute] = ["rpm", "1/min"],
        [CapacitanceUnit.Microfarad] = ["uF", "\u00b5F", "\u03bcF"],
    };

    /// <summary>One spelling may stand in several kinds: F is a degree Fahrenheit and a farad.</summary>
    private static readonly FrozenDictionary<string, Unit[]> BySpelling = Chosen
        .SelectMany(row => row.From, (row, from) => (From: from, Unit: Convert(row.Kind, from, row.Into)))
        .SelectMany(entry => Written(entry.From), (entry, spelling) => (Spelling: spelling, entry.Unit))
        .GroupBy(entry => entry.Spelling, entry => entry.Unit, StringComparer.Ordinal)
        .ToFrozenDictionary(meanings => meanings.Key, meanings => meanings.ToArray(), StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, Unit[]>.AlternateLookup<ReadOnlySpan<char>> Lookup =
        BySpelling.GetAlternateLookup<ReadOnlySpan<char>>();

    private static readonly FrozenDictionary<string, string> Meant = Chosen
        .SelectMany(row => row.From)
        .SelectMany(Loose, (unit, spelling) => (Spelling: spelling, Right: Written(unit)[0]))
        .DistinctBy(entry => entry.Spelling, StringComparer.OrdinalIgnoreCase)
        .ToFrozenDictionary(entry => entry.Spelling, entry => entry.Right, StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<QuantityKind, string> Lists = Chosen.ToFrozenDictionary(
        row => row.Kind, row => string.Join(", ", row.From.Select(unit => Written(unit)[0])));

    /// <summary>The unit so written, of one of the kinds wanted if it can be; capitals matter.</summary>
    public static bool TryFind(ReadOnlySpan<char> spelling, ReadOnlySpan<QuantityKind> wanted, out Unit unit)
    {
        unit = default;
        if (!Lookup.TryGetValue(spelling, out Unit[]? meanings)) return false;
        unit = meanings[0];
        foreach (Unit meaning in meanings)
        {
            if (wanted.Contains(meaning.Kind)) unit = meaning;
        }

        return true;
    }

    /// <summary>The right spelling for a unit written in wrong capitals or in full, such as <c>KW</c> or <c>feet</c>.</summary>
    public static string? Nearest(string spelling) => Meant.GetValueOrDefault(spelling);

    /// <summary>The units of a kind for an error's text, each in its first spelling.</summary>
    public static string List(QuantityKind kind) => Lists[kind];

    /// <summary>Every spelling of every unit.</summary>
    public static IEnumerable<(string Spelling, Unit Unit)> All =>
        BySpelling.SelectMany(entry => entry.Value, (entry, unit) => (entry.Key, unit));

    private static string[] Written(Enum unit) => Spellings.GetValueOrDefault(unit) ?? [Abbreviations(unit)[0]];

    private static IEnumerable<string> Loose(Enum unit)
    {
        UnitInfo info = Quantity.GetUnitInfo(unit);
        return [.. Written(unit), .. Abbreviations(unit), info.Name, info.PluralName];
    }

    private static string[] Abbreviations(Enum unit) => UnitAbbreviationsCache.Default.GetUnitAbbreviations(
        unit.GetType(), System.Convert.ToInt32(unit, CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>The casts to decimal round to 15 digits, which strips the binary noise from UnitsNet's factors.</summary>
    private static Unit Convert(QuantityKind kind, Enum unit, Enum into) => new(
        kind,
        (decimal)UnitConverter.Convert(0, into, unit),
        (decimal)(UnitConverter.Convert(9, unit, into) - UnitConverter.Convert(0, unit, into)));
}
