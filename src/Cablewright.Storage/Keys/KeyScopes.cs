using System.Collections.Frozen;

namespace Cablewright.Storage.Keys;

/// <summary>What a key may do with its own shop's things.</summary>
[Flags]
public enum KeyScopes
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Read kits.</summary>
    KitsRead = 1,

    /// <summary>Put and delete kits.</summary>
    KitsWrite = 2,

    /// <summary>Read recorded assessments.</summary>
    RecordsRead = 4,

    /// <summary>Record assessments and delete records.</summary>
    RecordsWrite = 8,
}

/// <summary>Scopes as people write them.</summary>
public static class ScopeWords
{
    private static readonly FrozenDictionary<string, KeyScopes> ByWord = new Dictionary<string, KeyScopes>
    {
        ["kits:read"] = KeyScopes.KitsRead,
        ["kits:write"] = KeyScopes.KitsWrite,
        ["records:read"] = KeyScopes.RecordsRead,
        ["records:write"] = KeyScopes.RecordsWrite,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Every scope together.</summary>
    public const KeyScopes All =
        KeyScopes.KitsRead | KeyScopes.KitsWrite | KeyScopes.RecordsRead | KeyScopes.RecordsWrite;

    /// <summary>Reads words parted by commas; <c>null</c> where one is none.</summary>
    public static KeyScopes? Parse(string words)
    {
        KeyScopes scopes = KeyScopes.None;
        foreach (string word in words.Split(',', StringSplitOptions.TrimEntries))
        {
            if (!ByWord.TryGetValue(word, out KeyScopes scope)) return null;
            scopes |= scope;
        }

        return scopes;
    }

    /// <summary>The words of scopes, parted by commas.</summary>
    public static string Words(this KeyScopes scopes) => string.Join(
        ',', ByWord.Where(entry => scopes.HasFlag(entry.Value)).Select(entry => entry.Key).Order(StringComparer.Ordinal));
}
