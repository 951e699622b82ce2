namespace Cablewright.Contract.Schema;

/// <summary>Marks text that is a conductor size as the trade writes it.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ConductorSizeAttribute : Attribute
{
    /// <summary>A size of each kind.</summary>
    public const string Example = "4 AWG";

    /// <summary>
    /// The notations that are read, as a regular expression (ECMA-262); whether the size is known is checked beyond it.
    /// </summary>
    public const string Pattern =
        "^\\s*([0-9]{1,2}|0{3,4}|[1-4]/0)\\s*[Aa][Ww][Gg]\\s*$"
        + "|^\\s*([0-9]{1,2}|0{3,4}|[1-4]/0)\\s*([Gg][Aa][Uu][Gg][Ee]|[Gg][Aa]\\.?)\\s*$|^\\s*[1-4]/0\\s*$"
        + "|^\\s*[Aa][Ww][Gg]\\s*([0-9]{1,2}|0{3,4}|[1-4]/0)\\s*$"
        + "|^\\s*[0-9]{1,3}(\\.[0-9]{1,3})?\\s*([Mm][Mm](2|²|\\^2)|[Ss][Qq]\\.? ?[Mm][Mm])\\s*$";

    /// <summary>What is accepted, for people.</summary>
    public const string Accepted =
        "22 AWG to 4/0 AWG, or a standard metric size from 0.5 mm2 to 150 mm2; for example \"4 AWG\", \"1/0 AWG\", \"25 mm2\"; "
        + "\"4 gauge\" is taken for \"4 AWG\"";
}
