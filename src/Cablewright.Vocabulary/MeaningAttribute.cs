namespace Cablewright.Vocabulary;

/// <summary>What a code says, beside the code itself, for whoever looks it up.</summary>
/// <param name="text">One sentence.</param>
[AttributeUsage(AttributeTargets.Field)]
public sealed class MeaningAttribute(string text) : Attribute
{
    /// <summary>One sentence.</summary>
    public string Text => text;
}
