using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Json;

/// <summary>Parses a text as JSON, or says where it stops being JSON, counting lines and columns from 1 as editors do.</summary>
internal static class JsonSyntax
{
    public static Fault? Fault(ReadOnlyMemory<byte> text, JsonDocumentOptions options, out JsonDocument? document)
    {
        document = null;
        if (text.Span.Trim(" \t\r\n"u8).IsEmpty)
            return new Fault("", ShapeCodes.Empty, "the body is empty; expected JSON");
        if (!Utf8.IsValid(text.Span))
            return new Fault("", ShapeCodes.NotUtf8, $"{Position(text.Span, ValidBytes(text.Span))}: a byte that is not UTF-8", null, "JSON in UTF-8");
        try
        {
            document = JsonDocument.Parse(text, options);
            return null;
        }
        catch (JsonException exception)
        {
            return Explain(text.Span, Offset(text.Span, exception), options.MaxDepth);
        }
    }

    private static Fault Explain(ReadOnlySpan<byte> text, int offset, int mostDepth)
    {
        JsonTrouble trouble = JsonTrouble.Find(text, offset, mostDepth);
        return trouble.IsDepth
            ? new Fault("", ShapeCodes.TooDeep, $"{Position(text, trouble.At)}: more than {mostDepth} arrays and objects within one another", null,
                $"at most {mostDepth} levels")
            : new Fault("", ShapeCodes.Malformed, $"{Position(text, trouble.At)}: expected {trouble.Expected}, found {Found(text[trouble.At..])}");
    }

    private static string Position(ReadOnlySpan<byte> text, int at)
    {
        ReadOnlySpan<byte> before = text[..at];
        int line = before.Count((byte)'\n') + 1;
        int column = Encoding.UTF8.GetCharCount(before[(before.LastIndexOf((byte)'\n') + 1)..]) + 1;
        return $"line {line}, column {column}";
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
