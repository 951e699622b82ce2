namespace Cablewright.Contract.Schema;

/// <summary>Marks text that is the code of a currency.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class CurrencyAttribute : Attribute
{
    /// <summary>A right value.</summary>
    public const string Example = "EUR";

    /// <summary>What is read, as a regular expression (ECMA-262): the form of an ISO 4217 code.</summary>
    public const string Pattern = "^[A-Z]{3}$";

    /// <summary>What is accepted, for people.</summary>
    public const string Accepted = "three capital letters (ISO 4217), for example \"EUR\"";
}
