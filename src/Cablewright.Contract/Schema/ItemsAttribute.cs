namespace Cablewright.Contract.Schema;

/// <summary>How many items a list may hold, ends included.</summary>
/// <param name="fewest">The fewest.</param>
/// <param name="most">The most.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ItemsAttribute(int fewest, int most) : Attribute
{
    /// <summary>The fewest.</summary>
    public int Fewest { get; } = fewest;

    /// <summary>The most.</summary>
    public int Most { get; } = most;
}
