using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Damage to bodies: to what a document says, to how it is written, and to its bytes.</summary>
internal static class BodyDamage
{
    /// <summary>Stands in a document for text that no document can be made to hold.</summary>
    private const string Mark = "@@raw@@";

    private static readonly string[] Values =
    [
        "null", "true", "false", "0", "-0", "-1", "1", "2.7", "8", "1e400", "-1e400", "1e-400", "1E+99999999999", "0.1e1",
        "123456789012345678901234567890", "9007199254740993", "[]", "{}", "[[]]", "[null]", "{\"\":{}}", "{\"a\":1,\"a\":2}",
    ];

    /// <summary>Texts as they stand between quotation marks.</summary>
    private static readonly string[] Texts =
    [
        "", " ", "body", "bass", "starter", "supply", "return", "aluminium", "relay", "dc-dc-charger", "2026.2", "4/0 AWG",
        "5 mm2", "0/0 AWG", "-3 AWG", "0 m", "0.01 m", "100 m", "50 kW", "0.5 A", "2000 A", "60 V", "6 V", "60 C", "-40 C",
        "1 F", "2 h", "1 ms", "0 %", "100 %", "16", "16 ft 6 in", "16 ft 16 ft", "1e3 A", "1,5 m", "-1 A", "\u2212 5 C",
        "5 \u2103", "5 \u00b5\u03a9", "999999999999999999999999999999999999 A", "0.000000000000000000000000000001 m", "\\u0000",
        "\\ud800", "\\udc00\\ud800", "\\uD83D\\uDE97", "\u202e", "<script>", "';--", "{0}",
    ];

    /// <summary>What no JSON holds where a value should be.</summary>
    private static readonly string[] Scraps =
    [
        "NaN", "-Infinity", "tru", "01", "+1", ".5", "1.", "0x10", "\"\\x\"", "\"\u0001\"", "'single'", "/*c*/1", "\"open",
        "1,", "]", "}", "\"a\",\"id\":\"b\"",
    ];

    private static readonly string[] Names =
        ["", "id", "length", "Length", "runs", "RUNS", "__proto__", "$ref", "\\u0069d", "fitted", "vehicle", "\\ud800", "a b"];

    /// <summary>The text of a document, damaged in a few places.</summary>
    public static string Text(JsonNode document, Dice dice)
    {
        JsonNode whole = new JsonArray(document.DeepClone());
        string[] raw = [.. Enumerable.Range(0, dice.OneOf(1, 1, 2, 4)).Select(_ => Raw(dice))];
        for (int i = 0; i < raw.Length; i++) Damage(whole, $"{Mark}{i}", dice);
        string text = whole.ToJsonString()[1..^1];
        for (int i = 0; i < raw.Length; i++)
            text = text.Replace($"\"{Mark}{i}\":", $"\"{dice.OneOf(Names)}\":", StringComparison.Ordinal)
                .Replace($"\"{Mark}{i}\"", raw[i], StringComparison.Ordinal);
        return text;
    }

    /// <summary>Bytes, damaged in a few places, or coded as no body may be.</summary>
    public static byte[] Bytes(byte[] body, Dice dice)
    {
        int at = dice.Below(body.Length + 1), length = Math.Min(dice.OneOf(1, 1, 2, 8, 100), body.Length - at);
        return dice.Below(10) switch
        {
            0 => body[..at],
            1 => [.. body[..at], .. dice.Bytes(length), .. body[(at + length)..]],
            2 => [.. body[..at], .. body[(at + length)..]],
            3 => [.. body[..at], .. body[at..(at + length)], .. body[at..]],
            4 => [.. body[..at], 0xED, 0xA0, 0x80, .. body[at..]],
            5 => [0xEF, 0xBB, 0xBF, .. body],
            6 => dice.OneOf(Encoding.Unicode, Encoding.UTF32).GetBytes(Encoding.UTF8.GetString(body)),
            7 => [.. body, .. dice.OneOf<byte[]>([0], body, [(byte)'\n'], [(byte)']'], dice.Bytes(20))],
            8 => Flipped(body, dice),
            _ => Encoding.UTF8.GetBytes(dice.OneOf("", " ", "null", "{}", "[]", "\"\"", "\n\n\n")),
        };
    }

    private static byte[] Flipped(byte[] body, Dice dice)
    {
        byte[] flipped = [.. body];
        for (int flips = dice.Between(1, 5); flips > 0 && flipped.Length > 0; flips--)
            flipped[dice.Below(flipped.Length)] ^= (byte)(1 << dice.Below(8));
        return flipped;
    }

    private static string Raw(Dice dice) => dice.Weighted(20, 30, 5, 1, 1, 1) switch
    {
        0 => dice.OneOf(Values),
        1 => $"\"{dice.OneOf(Texts)}\"",
        2 => dice.OneOf(Scraps),
        3 => "\"" + new string(dice.OneOf('x', '1', ' ', '\u4e2d'), dice.OneOf(41, 101, 5_000, 100_000)) + "\"",
        4 => Nested("[", "]", dice),
        _ => Nested("{\"a\":", "}", dice),
    };

    private static string Nested(string open, string close, Dice dice)
    {
        int depth = dice.OneOf(5, 15, 16, 17, 64, 3_000);
        return string.Concat(Enumerable.Repeat(open, depth)) + "1" + string.Concat(Enumerable.Repeat(close, depth));
    }

    private static void Damage(JsonNode whole, string mark, Dice dice)
    {
        JsonNode[] parts = [.. JsonParts.Below(whole)];
        if (parts.Length == 0) return;
        JsonNode part = dice.OneOf(parts);
        switch (dice.Weighted(20, 5, 5, 5, 10, 15, 15))
        {
            case 0: part.ReplaceWith(mark); break;
            case 1 when part.Parent is JsonObject parent: parent.Remove(part.GetPropertyName()); break;
            case 2 when part.Parent is JsonObject parent: parent[mark] = part.DeepClone(); break;
            case 3 when part.Parent is JsonObject parent: Rename(parent, part, mark); break;
            case 4 when part is JsonArray list: Repeat(list, dice); break;
            case 5: PutText(dice.OneOf(parts), dice.OneOf(Texts)); break;
            case 6: PutText(part, part.GetValueKind() is JsonValueKind.String ? Mangled((string)part!, dice) : ""); break;
            default: part.ReplaceWith(dice.OneOf(parts).DeepClone()); break;
        }
    }

    /// <summary>Puts text in the place of text.</summary>
    private static void PutText(JsonNode part, string text)
    {
        if (part.GetValueKind() is JsonValueKind.String) part.ReplaceWith(text);
    }

    private static void Rename(JsonObject parent, JsonNode part, string mark)
    {
        parent.Remove(part.GetPropertyName());
        parent[mark] = part;
    }

    private static void Repeat(JsonArray list, Dice dice)
    {
        JsonNode?[] items = [.. list.Select(item => item?.DeepClone())];
        list.Clear();
        for (int copies = dice.OneOf(0, 2, 2, 70); copies > 0; copies--)
        {
            foreach (JsonNode? item in items) list.Add(item?.DeepClone());
        }
    }

    /// <summary>Text with one character another one: most often a unit that is none, or a number that is another.</summary>
    private static string Mangled(string text, Dice dice)
    {
        int at = dice.Below(text.Length + 1);
        string put = dice.OneOf("", "0", "9", "k", "m", " ", "-", ".", ",", "\u00b5", "\u00a0", "\n", "E", "%", text);
        return text[..at] + put + text[Math.Min(text.Length, at + dice.Below(2))..];
    }
}
