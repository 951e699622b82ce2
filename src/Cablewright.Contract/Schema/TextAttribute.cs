namespace Cablewright.Contract.Schema;

/// <summary>How long a text may be.</summary>
/// <param name="longest">The most characters (UTF-16 code units).</param>
/// <param name="example">A right value.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class TextAttribute(int longest, string example) : Attribute
{
    /// <summary>The most characters.</summary>
    public int Longest { get; } = longest;

    /// <summary>A right value.</summary>
    public string Example { get; } = example;
}
