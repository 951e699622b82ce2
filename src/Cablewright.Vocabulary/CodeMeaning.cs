using System.Diagnostics.CodeAnalysis;
using System.Reflection;

namespace Cablewright.Vocabulary;

/// <summary>A stable code and what it says.</summary>
/// <param name="Code">The code, dotted.</param>
/// <param name="Meaning">What it says.</param>
public sealed record CodeMeaning(string Code, string Meaning)
{
    /// <summary>Every code of a class of constants that carry a <see cref="MeaningAttribute"/>, in their order.</summary>
    public static IReadOnlyList<CodeMeaning> In(
        [DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields | DynamicallyAccessedMemberTypes.NonPublicFields)]
        Type codes)
    {
        ArgumentNullException.ThrowIfNull(codes);
        return [.. codes.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
            .Where(field => field.IsLiteral)
            .OrderBy(field => field.MetadataToken)
            .Select(field => new CodeMeaning(
                (string)field.GetRawConstantValue()!, field.GetCustomAttribute<MeaningAttribute>()!.Text))];
    }
}
