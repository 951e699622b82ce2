using System.Text.RegularExpressions;
using Cablewright.Engine.Designs;

namespace Cablewright.Engine.Tests.Reports;

/// <summary>The engine says what it found in types; words and JSON pointers are the reports'.</summary>
/// <remarks>
/// Looks at every string literal of the compiled engine. The meanings of codes do not count, nor do those of rules, which
/// stand in their files.
/// </remarks>
public partial class EngineWordsTests
{
    /// <summary>For programmers, for whoever maintains the data files, or the name of a source.</summary>
    private static readonly string[] NotForCallers =
    [
        .. CompiledTexts.OfTheSerializer,

        // Exceptions.
        " end of run ", " is asked for by two members", " is empty.", " is in \"", " is missing", " is not in the assembly.",
        " is unknown", " stands there twice", "\" and not in \"", "A node reaches no held node.",
        "The computation takes more work than it may.", "The corner that is worst has become better.", "The data file ",
        "The figures of ruleset ", "The fuse families: one is missing, or stands there twice.",
        "The ratings of isolators do not rise.", "The rest voltages: a chemistry has fewer than two points.",

        // Meaning and source of figures that no data file has.
        "counted, not timed, so that it is the same on every machine", "drop from battery to amplifier and back, at most",
        "playing time with the engine off, at least", "runs solved or gone over for fuses before a choice stops where it is",
        "the build's own limit", "the part's own curve, as stated", "wall of insulation on conductors up to {0} mm2",
        "ASTM B258: diameter 0.127 mm x 92^((36 - n)/39)",

        // Units of rulesets.
        "ohm Ah per 12 V nominal", "V per 12 V nominal",
    ];

    private static readonly IReadOnlyList<string> Literals = CompiledTexts.Of(typeof(Release).Assembly);

    [Fact]
    public void No_literal_of_the_engine_is_a_callers_sentence()
    {
        HashSet<string> known = [.. NotForCallers, .. RuleBook.All.Select(rule => rule.Finding.Meaning)];
        Assert.DoesNotContain(Literals, literal => CompiledTexts.IsSentence(literal) && !known.Contains(literal));
    }

    [Fact]
    public void No_literal_of_the_engine_is_a_json_pointer() =>
        Assert.DoesNotContain(Literals, literal => Pointer().IsMatch(literal) && literal != "/ruleset.json");

    /// <summary>What is left out above is there, so that the list does not outgrow the engine.</summary>
    [Fact]
    public void Every_exception_is_needed() => Assert.Empty(NotForCallers.Except(Literals));

    [Theory]
    [InlineData("no battery is listed", true)]
    [InlineData(" in place of ", true)]
    [InlineData("the safe side", true)]
    [InlineData("starter", false)]
    [InlineData(", Runs = ", false)]
    public void A_sentence_is_told_from_other_text(string text, bool isSentence) =>
        Assert.Equal(isSentence, CompiledTexts.IsSentence(text));

    [Theory]
    [InlineData("/runs/", true)]
    [InlineData("/conductor/size", true)]
    [InlineData("/0 AWG", false)]
    public void A_pointer_is_told_from_other_text(string text, bool isPointer) =>
        Assert.Equal(isPointer, Pointer().IsMatch(text));

    [GeneratedRegex("^/[A-Za-z-]")]
    private static partial Regex Pointer();
}
