using System.Globalization;
using Cablewright.Storage.Keys;

namespace Cablewright.Service.Commands;

/// <summary>What is asked of a new key.</summary>
/// <param name="Scopes">What it may do.</param>
/// <param name="Life">How long it is valid; for ever where not stated.</param>
/// <param name="Label">What its maker calls it.</param>
internal sealed record KeyOptions(KeyScopes Scopes, TimeSpan? Life, string? Label)
{
    /// <summary>Reads the options; <c>null</c> where one is not understood.</summary>
    public static KeyOptions? Read(string[] options)
    {
        var asked = new KeyOptions(ScopeWords.All, null, null);
        foreach (string[] option in options.Chunk(2))
        {
            if (option is not [string name, string value] || asked.With(name, value) is not { } next) return null;
            asked = next;
        }

        return asked;
    }

    private KeyOptions? With(string name, string value) => name switch
    {
        "--scopes" => ScopeWords.Parse(value) is { } scopes ? this with { Scopes = scopes } : null,
        "--days" => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out int days) && days is > 0 and < 36_500
            ? this with { Life = TimeSpan.FromDays(days) }
            : null,
        "--label" => this with { Label = value },
        _ => null,
    };
}
