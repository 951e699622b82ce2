namespace Cablewright.Vocabulary;

/// <summary>Other words that requests may use for a member, in any capitals, as people type them; answers never do.</summary>
/// <param name="words">The words.</param>
[AttributeUsage(AttributeTargets.Field)]
public sealed class AlsoReadAttribute(params string[] words) : Attribute
{
    /// <summary>The words.</summary>
    public IReadOnlyList<string> Words => words;
}
