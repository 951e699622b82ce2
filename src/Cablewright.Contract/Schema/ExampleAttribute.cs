namespace Cablewright.Contract.Schema;

/// <summary>A value that a member could hold, for the published contract.</summary>
/// <param name="value">A string or a boolean; for a list, one of its items.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ExampleAttribute(object value) : Attribute
{
    /// <summary>The value.</summary>
    public object Value { get; } = value;

    /// <summary>The value is a text of JSON that stands for what it says.</summary>
    public bool IsJson { get; init; }

    /// <summary>What the text looks like, as a regular expression (ECMA-262), where it is always alike.</summary>
    public string? Pattern { get; init; }
}
