using Cablewright.Contract;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Names for the places and runs of one build, none twice.</summary>
internal sealed class Names(Dice dice, Temper temper)
{
    private const string Letters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_-";

    private static readonly string[] Odd =
        ["-", "_", "0", "00", "Body", "BODY", "null", "true", "constructor", "__proto__", "supply", "return", "1e9", "battery"];

    private readonly HashSet<string> taken = new(StringComparer.Ordinal) { ContractLimits.BodyPlace, ContractLimits.EnginePlace };

    /// <summary>A name for a thing of some kind.</summary>
    public string New(string kind)
    {
        string name = temper.OddNames ? Any() : kind;
        for (int i = 2; !taken.Add(name); i++) name = temper.OddNames ? Any() : kind + i;
        return name;
    }

    /// <summary>Takes a name that is given.</summary>
    public string Take(string name)
    {
        taken.Add(name);
        return name;
    }

    private string Any() => dice.Chance(0.3)
        ? dice.OneOf(Odd)
        : string.Concat(Enumerable.Range(0, dice.OneOf(1, 2, 5, 40)).Select(_ => Letters[dice.Below(Letters.Length)]));
}
