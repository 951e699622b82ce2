namespace Cablewright.Contract.Schema;

/// <summary>Marks text that is an id or the name of a place: 1 to 40 letters, digits, <c>-</c> and <c>_</c>.</summary>
/// <param name="example">A right value.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class IdentifierAttribute(string example) : Attribute
{
    /// <summary>What is accepted, for people.</summary>
    public const string Accepted = "1 to 40 of the letters A to Z and a to z, digits, - and _";

    /// <summary>A right value.</summary>
    public string Example { get; } = example;

    /// <summary>It names a new place, so that <c>body</c> and <c>engine</c>, which are always there, are taken.</summary>
    public bool NamesPlace { get; init; }
}
