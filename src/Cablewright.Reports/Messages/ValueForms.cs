using Cablewright.Contract.Assessments;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Messages;

/// <summary>How a value is put into a sentence: by the unit in which its name ends, unless the sentence says how.</summary>
internal static class ValueForms
{
    /// <summary>Says how each item of a list is written, a star in the item's place.</summary>
    private const string Each = "each:";

    /// <summary>A name that ends so holds such a figure; the longest ending counts.</summary>
    private static readonly (string Ending, Func<double, Phrase, string> Text)[] ByName =
    [
        ("AmpHours", (value, _) => Phrase.Number(value) + " Ah"),
        ("Amps", (value, _) => Phrase.Amps(value)),
        ("Volts", (value, _) => Phrase.Volts(value)),
        ("Watts", (value, _) => Phrase.Watts(value)),
        ("Ohms", (value, _) => Phrase.Milliohms(value)),
        ("Minutes", (value, _) => Phrase.Minutes(value)),
        ("Milliseconds", (value, _) => Phrase.Number(value) + " ms"),
        ("Seconds", (value, _) => Phrase.Seconds(value)),
        ("Share", (value, _) => Phrase.Percent(value)),
        ("Percent", (value, _) => Phrase.Number(value) + " %"),
        ("Metres", (value, phrase) => phrase.Length(value)),
        ("Celsius", (value, phrase) => phrase.Temperature(value)),
        ("Kelvin", (value, phrase) => phrase.TemperatureDifference(value)),
        ("Mm2", (value, _) => Phrase.Number(value) + " mm2"),
        ("Rpm", (value, _) => Phrase.Number(value) + " rpm"),
        ("Farads", (value, _) => Phrase.Number(value) + " F"),
        ("Joules", (value, _) => Phrase.Number(value) + " J"),
        ("Decibels", (value, _) => Phrase.Number(value) + " dB"),
    ];

    /// <summary>The text of a value.</summary>
    /// <param name="name">The value's name.</param>
    /// <param name="form">How the sentence wants it; empty: as its name says.</param>
    /// <param name="value">The value.</param>
    /// <param name="units">The units of the sentence.</param>
    public static string Text(string name, string form, Param value, UnitSystem units)
    {
        if (value.Text is { } text) return text;
        if (value.Number is { } number) return Text(name, form, number, units);
        IEnumerable<string> items = value.List!.Select(item => Text(name, "", item, units));
        return form.StartsWith(Each, StringComparison.Ordinal)
            ? string.Join(", ", items.Select(item => form[Each.Length..].Replace("*", item, StringComparison.Ordinal)))
            : string.Join(form is "or" ? " or " : ", ", items);
    }

    private static string Text(string name, string form, double value, UnitSystem units) => form switch
    {
        "number" => Phrase.Number(value),
        "exact" => WrittenText.Of(WrittenFigure.Of(value, UnitOf(name))),
        "stated" => WrittenText.Of(WrittenSteps.Length(value, units)),
        "taped" => WrittenText.Of(WrittenSteps.Taped(value, units)),
        _ => Array.Find(ByName, each => EndsIn(name, each.Ending)).Text is { } shown
            ? shown(value, new Phrase(units))
            : Phrase.Number(value),
    };

    private static WrittenUnit UnitOf(string name) => EndsIn(name, "AmpHours") ? WrittenUnit.AmpereHour
        : EndsIn(name, "Amps") ? WrittenUnit.Ampere
        : WrittenUnit.Watt;

    private static bool EndsIn(string name, string ending) => name.EndsWith(ending, StringComparison.OrdinalIgnoreCase);
}
