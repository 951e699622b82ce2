using System.ComponentModel.DataAnnotations;

namespace Cablewright.Service.Json;

/// <summary>How long a text or an array may be, ends included, as the member's attributes state it.</summary>
internal readonly record struct Size(int Least, int Most)
{
    public static Size Any => new(0, int.MaxValue);

    /// <summary>From <see cref="LengthAttribute"/>, <see cref="MinLengthAttribute"/>, <see cref="MaxLengthAttribute"/>.</summary>
    public static Size OfItems(IReadOnlyList<Attribute> stated) => stated.Aggregate(Any, (size, attribute) => attribute switch
    {
        LengthAttribute length => new Size(length.MinimumLength, length.MaximumLength),
        MinLengthAttribute shortest => size with { Least = shortest.Length },
        MaxLengthAttribute longest => size with { Most = longest.Length },
        _ => size,
    });

    /// <summary>From the same, or from <see cref="StringLengthAttribute"/>.</summary>
    public static Size OfText(IReadOnlyList<Attribute> stated) =>
        stated.OfType<StringLengthAttribute>().FirstOrDefault() is { } text ? new Size(text.MinimumLength, text.MaximumLength) : OfItems(stated);

    public string? Accepted(string what) => this switch
    {
        { Most: int.MaxValue } => Least == 0 ? null : $"at least {Least} {what}",
        { Least: 0 } => $"at most {Most} {what}",
        _ => $"{Least} to {Most} {what}",
    };
}
