using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Json;

/// <summary>Parses a text as JSON, or says where it stops being JSON, counting lines and columns from 1 as editors do.</summary>
internal static class JsonSyntax
{
    /// <summary>The document, or the one fault.</summary>
    public static Fault? Fault(ReadOnlyMemory<byte> text, int mostDepth, out JsonDocument? document, long firstLine = 1)
    {
        document = null;
        if (text.Span.Trim(" \t\r\n"u8).IsEmpty) return new Fault("", ShapeCodes.Empty, "the body is empty; expected JSON");
        if (!Utf8.IsValid(text.Span))
            return At(text.Span, ValidBytes(text.Span), ShapeCodes.NotUtf8, "a byte that is not UTF-8", firstLine);
        try
        {
            document = JsonDocument.Parse(text, new JsonDocumentOptions { MaxDepth = mostDepth });
            return null;
        }
        catch (JsonException exception)
        {
            return Explain(text.Span, Offset(text.Span, exception), mostDepth, firstLine);
        }
    }

    private static Fault Explain(ReadOnlySpan<byte> text, int offset, int mostDepth, long firstLine)
    {
        JsonErrorLocator trouble = JsonErrorLocator.Find(text, offset, mostDepth);
        return trouble.IsDepth
            ? At(text, trouble.At, ShapeCodes.TooDeep, $"more than {mostDepth} arrays and objects within one another", firstLine)
            : At(
                text,
                trouble.At,
                ShapeCodes.Malformed,
                $"expected {trouble.Expected}, found {Found(text[trouble.At..])}",
                firstLine);
    }

    private static Fault At(ReadOnlySpan<byte> text, int at, string code, string trouble, long firstLine)
    {
        ReadOnlySpan<byte> before = text[..at];
        long line = firstLine + before.Count((byte)'\n');
        int column = Encoding.UTF8.GetCharCount(before[(before.LastIndexOf((byte)'\n') + 1)..]) + 1;
        return new Fault("", code, $"line {line}, column {column}: {trouble}");
    }

    private static string Found(ReadOnlySpan<byte> rest)
    {
        if (rest.IsEmpty) return "the end of the text";
        return Rune.DecodeFromUtf8(rest, out Rune rune, out _) == OperationStatus.Done && !Rune.IsControl(rune)
            ? $"'{rune}'"
            : $"the control character {rune.Value:X2}";
    }

    private static int ValidBytes(ReadOnlySpan<byte> text)
    {
        int at = 0;
        while (Rune.DecodeFromUtf8(text[at..], out _, out int length) == OperationStatus.Done) at += length;
        return at;
    }

    private static int Offset(ReadOnlySpan<byte> text, JsonException exception)
    {
        int start = 0;
        for (long line = exception.LineNumber ?? 0; line > 0; line--) start += text[start..].IndexOf((byte)'\n') + 1;
        return Math.Min(text.Length, start + (int)(exception.BytePositionInLine ?? 0));
    }
}
