using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>The words that requests, answers and data files use for the members of an enumeration.</summary>
public static class TradeWords
{
    private const DynamicallyAccessedMemberTypes Fields = DynamicallyAccessedMemberTypes.PublicFields;

    /// <summary>The word for a value.</summary>
    public static string Word<[DynamicallyAccessedMembers(Fields)] T>(this T value) where T : struct, Enum =>
        WordsOf<T>.ByValue[value];

    /// <summary>All words of one enumeration, in its order.</summary>
    public static IReadOnlyList<string> All<[DynamicallyAccessedMembers(Fields)] T>() where T : struct, Enum =>
        [.. Enum.GetValues<T>().Select(value => value.Word())];

    /// <summary>The value for a word, exactly as written, or for another word that is read.</summary>
    public static bool TryParse<[DynamicallyAccessedMembers(Fields)] T>(string word, out T value) where T : struct, Enum =>
        WordsOf<T>.ByWord.TryGetValue(word, out value) || WordsOf<T>.ByOtherWord.TryGetValue(word, out value);

    /// <summary>The value for a word.</summary>
    /// <exception cref="ArgumentException">There is no such word.</exception>
    public static T Parse<[DynamicallyAccessedMembers(Fields)] T>(string word) where T : struct, Enum =>
        TryParse(word, out T value) ? value : throw new ArgumentException($"\"{word}\" is no {typeof(T).Name}.", nameof(word));

    /// <summary>The words of one enumeration, looked up without boxing its members.</summary>
    private static class WordsOf<[DynamicallyAccessedMembers(Fields)] T> where T : struct, Enum
    {
        public static readonly FrozenDictionary<T, string> ByValue = Enum.GetValues<T>().ToFrozenDictionary(
            value => value,
            value => typeof(T).GetField(value.ToString())!.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()!.Name);

        public static readonly FrozenDictionary<string, T> ByWord =
            ByValue.ToFrozenDictionary(each => each.Value, each => each.Key, StringComparer.Ordinal);

        public static readonly FrozenDictionary<string, T> ByOtherWord = Enum.GetValues<T>()
            .SelectMany(
                value => typeof(T).GetField(value.ToString())!.GetCustomAttribute<AlsoReadAttribute>()?.Words ?? [],
                (value, word) => (Word: word, Value: value))
            .ToFrozenDictionary(each => each.Word, each => each.Value, StringComparer.OrdinalIgnoreCase);
    }
}
