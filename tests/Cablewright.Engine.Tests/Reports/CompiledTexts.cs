using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using System.Text.RegularExpressions;

namespace Cablewright.Engine.Tests.Reports;

/// <summary>The texts of a compiled assembly.</summary>
internal static partial class CompiledTexts
{
    /// <summary>What the source generator of the serializer writes.</summary>
    public static readonly string[] OfTheSerializer =
    [
        "Setting init-only properties is not supported in source generation mode.",
        "The converter '{0}' cannot return null or a JsonConverterFactory instance.",
        "The converter '{0}' is not compatible with the type '{1}'.",
    ];

    /// <summary>
    /// Every string literal, the pieces of interpolated ones included: they stand in the assembly's heap of user strings. The
    /// texts of attributes do not stand there, nor does what a record's text consists of.
    /// </summary>
    public static IReadOnlyList<string> Of(Assembly assembly)
    {
        using var file = new PEReader(File.OpenRead(assembly.Location));
        MetadataReader reader = file.GetMetadataReader();
        var literals = new List<string>();
        for (UserStringHandle handle = reader.GetNextHandle(default(UserStringHandle));
            !handle.IsNil;
            handle = reader.GetNextHandle(handle))
            literals.Add(reader.GetUserString(handle));
        return literals;
    }

    /// <summary>Whether a text is of a sentence.</summary>
    public static bool IsSentence(string text) => Sentence().IsMatch(text);

    /// <summary>Two words with a blank between, the second of small letters.</summary>
    [GeneratedRegex(@"[a-z'""] [a-z]{2,}|[a-z]{2,} [a-z""]")]
    private static partial Regex Sentence();
}
