using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;
using Cablewright.Contract;
using Cablewright.Contract.Schema;
using Cablewright.Engine.Conductors;
using Cablewright.Reports.Faults;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Validation;

/// <summary>What one attribute states of one member.</summary>
/// <param name="member">The member.</param>
/// <param name="check">The faults of a value that is there.</param>
internal sealed class MemberRule(JsonPropertyInfo member, Func<object, Fault[]> check)
{
    private readonly string pointer = "/" + member.Name;
    private readonly Func<object, object?> valueIn = member.Get!;

    /// <summary>Adds what is wrong with the member of an instance, each fault with its place in the instance.</summary>
    public void AddFaults(object owner, List<Fault> faults)
    {
        if (valueIn(owner) is not { } value) return;
        foreach (Fault fault in check(value)) faults.Add(fault.Below(pointer));
    }
}

/// <summary>Reads the attributes of a contract type's members as rules.</summary>
internal static partial class MemberRules
{
    /// <summary>Every rule that a member's attributes state.</summary>
    public static IEnumerable<MemberRule> Of(JsonPropertyInfo member) =>
        ChecksOf((PropertyInfo)member.AttributeProvider!).Select(check => new MemberRule(member, check));

    private static IEnumerable<Func<object, Fault[]>> ChecksOf(PropertyInfo member)
    {
        if (QuantityRule.Of(member) is { } quantity) yield return value => CheckQuantity((string)value, quantity);
        if (member.GetCustomAttribute<ConductorSizeAttribute>() is not null) yield return CheckSizes;
        if (member.GetCustomAttribute<IdentifierAttribute>() is { } id) yield return value => CheckId((string)value, id);
        if (member.GetCustomAttribute<ItemsAttribute>() is { } items) yield return value => CheckCount((ICollection)value, items);
        if (member.GetCustomAttribute<TextAttribute>() is { } text) yield return value => CheckLength((string)value, text);
        if (member.GetCustomAttribute<CurrencyAttribute>() is not null) yield return value => CheckCurrency((string)value);
        if (member.GetCustomAttribute<FigureAttribute>() is { } figure) yield return value => CheckRange(value, figure);
    }

    private static Fault[] CheckQuantity(string text, QuantityRule rule) => rule.Read(text).Fault is { } fault
        ? [new Fault("", fault.Code, fault.Detail, Excerpt.Of(text), fault.Accepted)]
        : [];

    private static Fault[] CheckSizes(object value) => value is string text
        ? CheckSize(text, "")
        : [.. ((IEnumerable<string>)value).SelectMany((item, index) => CheckSize(item, $"/{index}"))];

    private static Fault[] CheckSize(string text, string pointer) => ConductorSize.Parse(text).Problem is { } problem
        ? [new Fault(
            pointer, ContentCodes.SizeUnreadable, SizeProblemWriter.Text(problem), Excerpt.Of(text),
            ConductorSizeAttribute.Accepted)]
        : [];

    /// <summary>Of the line end .NET alone lets a pattern's end stand before.</summary>
    private static Fault[] CheckId(string id, IdentifierAttribute rule)
    {
        if (id.EndsWith('\n') || !Identifier().IsMatch(id))
            return [new Fault("", ContentCodes.IdMalformed, "this is not an id", Excerpt.Of(id), IdentifierAttribute.Accepted)];
        return rule.NamesPlace && AlwaysThere(id) is { } what
            ? [new Fault(
                "",
                ContentCodes.IdReserved,
                $"{id} is {what}; choose another id",
                Excerpt.Of(id),
                IdentifierAttribute.Accepted)]
            : [];
    }

    private static string? AlwaysThere(string place) => place switch
    {
        ContractLimits.BodyPlace => "the vehicle's body",
        ContractLimits.EnginePlace => "the engine block",
        _ => null,
    };

    private static Fault[] CheckCount(ICollection items, ItemsAttribute rule)
    {
        if (items.Count < rule.Fewest) return [Miscounted(ContentCodes.TooFewItems, $"at least {rule.Fewest} must be here")];
        return items.Count > rule.Most
            ? [Miscounted(ContentCodes.TooManyItems, $"{items.Count} are too many; the limit is {rule.Most}")]
            : [];

        Fault Miscounted(string code, string detail) => new("", code, detail, null, $"{rule.Fewest} to {rule.Most}");
    }

    private static Fault[] CheckLength(string text, TextAttribute rule) => text.Length > rule.Longest
        ? [new Fault(
            "",
            ContentCodes.TextTooLong,
            $"{text.Length} characters are too many",
            Excerpt.Of(text),
            $"at most {rule.Longest} characters")]
        : [];

    private static Fault[] CheckCurrency(string code) => code.EndsWith('\n') || !Currency().IsMatch(code)
        ? [new Fault(
            "", ContentCodes.CurrencyMalformed, "this is no currency code", Excerpt.Of(code), CurrencyAttribute.Accepted)]
        : [];

    private static Fault[] CheckRange(object value, FigureAttribute rule)
    {
        double number = Convert.ToDouble(value, CultureInfo.InvariantCulture);
        return number < rule.Smallest || number > rule.Largest
            ? [new Fault(
                "",
                ContentCodes.OutOfRange,
                string.Create(CultureInfo.InvariantCulture, $"{number} is out of range"),
                number,
                string.Create(CultureInfo.InvariantCulture, $"{rule.Smallest} to {rule.Largest}"))]
            : [];
    }

    [GeneratedRegex(ContractLimits.IdPattern, RegexOptions.ECMAScript)]
    private static partial Regex Identifier();

    [GeneratedRegex(CurrencyAttribute.Pattern, RegexOptions.ECMAScript)]
    private static partial Regex Currency();
}
