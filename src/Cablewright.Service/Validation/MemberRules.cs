using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Cablewright.Contract.Schema;
using Cablewright.Contract;
using Cablewright.Engine.Conductors;
using Cablewright.Reports.Faults;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Validation;

/// <summary>What one attribute states of one member.</summary>
/// <param name="Member">The member.</param>
/// <param name="Check">The faults of a value that is there.</param>
internal sealed record MemberRule(PropertyInfo Member, Func<object, IEnumerable<Fault>> Check);

/// <summary>Reads the attributes of a contract type's members as rules.</summary>
internal static partial class MemberRules
{
    /// <summary>Every rule that a member's attributes state.</summary>
    public static IEnumerable<MemberRule> Of(PropertyInfo member)
    {
        if (QuantityRule.Of(member) is { } quantity) yield return new(member, value => CheckQuantity((string)value, quantity));
        if (member.GetCustomAttribute<ConductorSizeAttribute>() is not null) yield return new(member, CheckSizes);
        if (member.GetCustomAttribute<IdentifierAttribute>() is { } id)
            yield return new(member, value => CheckId((string)value, id));
        if (member.GetCustomAttribute<ItemsAttribute>() is { } items)
            yield return new(member, value => CheckCount((ICollection)value, items));
        if (member.GetCustomAttribute<TextAttribute>() is { } text)
            yield return new(member, value => CheckLength((string)value, text));
        if (member.GetCustomAttribute<CurrencyAttribute>() is not null)
            yield return new(member, value => CheckCurrency((string)value));
        if (member.GetCustomAttribute<FigureAttribute>() is { } figure)
            yield return new(member, value => CheckRange(value, figure));
    }

    private static IEnumerable<Fault> CheckQuantity(string text, QuantityRule rule)
    {
        if (rule.Read(text).Fault is { } fault)
            yield return new Fault("", fault.Code, fault.Detail, Excerpt.Of(text), fault.Accepted);
    }

    private static IEnumerable<Fault> CheckSizes(object value) => value is string text
        ? CheckSize(text, "")
        : ((IEnumerable<string>)value).SelectMany((item, index) => CheckSize(item, $"/{index}"));

    private static IEnumerable<Fault> CheckSize(string text, string pointer)
    {
        if (ConductorSize.Parse(text).Problem is { } problem)
            yield return new Fault(
                pointer, ContentCodes.SizeUnreadable, SizeProblemWriter.Text(problem), Excerpt.Of(text), ConductorSizeAttribute.Accepted);
    }

    /// <summary>Of the line end .NET alone lets a pattern's end stand before.</summary>
    private static IEnumerable<Fault> CheckId(string id, IdentifierAttribute rule)
    {
        if (id.EndsWith('\n') || !Identifier().IsMatch(id))
            yield return new Fault(
                "", ContentCodes.IdMalformed, "this is not an id", Excerpt.Of(id), IdentifierAttribute.Accepted);
        else if (rule.NamesPlace && id == ContractLimits.BodyPlace)
            yield return new Fault(
                "",
                ContentCodes.IdReserved,
                "body is the vehicle's body; choose another id",
                Excerpt.Of(id),
                IdentifierAttribute.Accepted);
    }

    private static IEnumerable<Fault> CheckCount(ICollection items, ItemsAttribute rule)
    {
        if (items.Count < rule.Fewest)
            yield return new Fault(
                "", ContentCodes.TooFewItems, $"at least {rule.Fewest} must be here", null, $"{rule.Fewest} to {rule.Most}");
        else if (items.Count > rule.Most)
            yield return new Fault(
                "",
                ContentCodes.TooManyItems,
                $"{items.Count} are too many; the limit is {rule.Most}",
                null,
                $"{rule.Fewest} to {rule.Most}");
    }

    private static IEnumerable<Fault> CheckLength(string text, TextAttribute rule)
    {
        if (text.Length > rule.Longest)
            yield return new Fault(
                "",
                ContentCodes.TextTooLong,
                $"{text.Length} characters are too many",
                Excerpt.Of(text),
                $"at most {rule.Longest} characters");
    }

    private static IEnumerable<Fault> CheckCurrency(string code)
    {
        if (code.EndsWith('\n') || !Currency().IsMatch(code))
            yield return new Fault(
                "", ContentCodes.CurrencyMalformed, "this is no currency code", Excerpt.Of(code), CurrencyAttribute.Accepted);
    }

    private static IEnumerable<Fault> CheckRange(object value, FigureAttribute rule)
    {
        double number = Convert.ToDouble(value, CultureInfo.InvariantCulture);
        if (number < rule.Smallest || number > rule.Largest)
            yield return new Fault(
                "",
                ContentCodes.OutOfRange,
                string.Create(CultureInfo.InvariantCulture, $"{number} is out of range"),
                number,
                string.Create(CultureInfo.InvariantCulture, $"{rule.Smallest} to {rule.Largest}"));
    }

    [GeneratedRegex(ContractLimits.IdPattern, RegexOptions.ECMAScript)]
    private static partial Regex Identifier();

    [GeneratedRegex(CurrencyAttribute.Pattern, RegexOptions.ECMAScript)]
    private static partial Regex Currency();
}
