using System.Globalization;
using System.Reflection;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;
using Cablewright.Engine.Conductors;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Random values that a member of the contract accepts, by its own attributes.</summary>
internal sealed class RandomValues(Dice dice, Temper temper)
{
    private static readonly ILookup<QuantityKind, (string Spelling, Unit Unit)> Units =
        UnitTable.All.ToLookup(entry => entry.Unit.Kind);

    private static readonly string[] Scraps =
        ["a", "Z", " ", "\u00e9", "\u4e2d", "\"", "\\", "/", "<", "\n", "\u0001", "\u2028", "\ud83d\ude97", "\ufeff", "%s"];

    /// <summary>A value of a member, or <c>null</c> of one whose parts are members of their own.</summary>
    public JsonNode? Of(PropertyInfo member)
    {
        Type type = Nullable.GetUnderlyingType(member.PropertyType) ?? member.PropertyType;
        if (QuantityRule.Of(member) is { } quantity) return Quantity(quantity);
        if (member.GetCustomAttribute<ConductorSizeAttribute>() is not null && type == typeof(string)) return Size();
        if (member.GetCustomAttribute<FigureAttribute>() is { } figure) return Figure(figure, type == typeof(int));
        if (member.GetCustomAttribute<TextAttribute>() is { } text) return Text(text.Longest);
        if (member.GetCustomAttribute<CurrencyAttribute>() is not null) return dice.OneOf("EUR", "USD", "XXX");
        if (type == typeof(bool)) return dice.Chance(0.5);
        return type.IsEnum ? dice.OneOf(Words(type)) : null;
    }

    /// <summary>A conductor size in one of the trade's notations.</summary>
    public string Size()
    {
        string label = dice.OneOf(ConductorSize.All).Label;
        return dice.Weighted(8, 1, 1, 1) switch
        {
            0 => label,
            1 => label.Replace(" ", "", StringComparison.Ordinal),
            2 => label.Replace("mm2", "mm²", StringComparison.Ordinal),
            _ when label.EndsWith("AWG", StringComparison.Ordinal) => "awg " + label[..^4],
            _ => label.Replace("mm2", "sq mm", StringComparison.Ordinal),
        };
    }

    /// <summary>Every word of an enumeration of the contract.</summary>
    public static string[] Words(Type type) =>
        [.. type.GetFields(BindingFlags.Public | BindingFlags.Static)
            .Select(field => field.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()!.Name)];

    private string Quantity(QuantityRule rule)
    {
        QuantityRange range = dice.OneOf(rule.Ranges);
        if (dice.Chance(temper.Extreme)) return dice.Chance(0.5) ? range.SmallestText : range.LargestText;
        double value = Within((double)range.Smallest, (double)range.Largest, (double)rule.Read(range.Example).Value);
        string text = Written(value, range.Kind);
        // Rounding in the unit chosen may step over an end of the range.
        return rule.Read(text).Fault is null ? text : range.Example;
    }

    /// <summary>A value of the range: near the example, or anywhere.</summary>
    private double Within(double least, double most, double example)
    {
        bool isWide = dice.Chance(temper.Wide);
        if (least < 0) return isWide ? dice.Between(least, most) : Math.Clamp(example + dice.Between(-30.0, 30), least, most);
        if (!isWide) return Math.Clamp(example * dice.Across(0.5, 2), least, most);
        return dice.Across(Math.Max(least, most * 1e-6), most);
    }

    private string Written(double value, QuantityKind kind)
    {
        if (kind is QuantityKind.Length && value > 1 && dice.Chance(0.1))
            return string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(value / 0.3048)} ft {dice.Below(12)} in");
        (string spelling, Unit unit) = dice.OneOf([.. Units[kind]]);
        double number = value * 9 / (double)unit.Nine + (double)unit.Zero;
        double scale = Math.Pow(10, Math.Max(0, 3 - (int)Math.Floor(Math.Log10(Math.Max(1e-9, Math.Abs(number))))));
        decimal rounded = (decimal)(Math.Round(number * scale) / scale);
        return rounded.ToString("0.############", CultureInfo.InvariantCulture) + dice.OneOf(" ", " ", "") + spelling;
    }

    private JsonNode Figure(FigureAttribute rule, bool isWhole)
    {
        double value = dice.Chance(temper.Extreme)
            ? dice.OneOf(rule.Smallest, rule.Largest)
            : Within(rule.Smallest, rule.Largest, rule.Example);
        if (!isWhole) return Math.Clamp(Math.Round(value, 4), rule.Smallest, rule.Largest);
        return (int)Math.Clamp(Math.Round(value), rule.Smallest, rule.Largest);
    }

    private string Text(int longest)
    {
        if (dice.Chance(temper.Extreme)) return new string('x', longest);
        string text = string.Concat(Enumerable.Range(0, dice.Below(8)).Select(_ => dice.OneOf(Scraps)));
        return text.Length <= longest ? text : "";
    }
}
