using Cablewright.Reports.Messages;

namespace Cablewright.Engine.Tests.Reports;

/// <summary>What the reports say in words stands in the catalogue; in code stand formulas with their numbers put in.</summary>
public class ReportWordsTests
{
    private static readonly string[] NotSentences =
    [
        .. CompiledTexts.OfTheSerializer,

        // Exceptions, and the id of a run that is tried and never shown.
        " has no words.", "No question is asked of it.",
        "No name for a figure in ", "Nothing was measured.", "the strap of the battery",

        // The workings of a finding: drop and its parts.
        "whole drop = ", "; of it ", " in \"", " of its current", " in the body and the battery's strap",
        "; fuses, joints, body and straps left out: ", "metres to the ohm at 20 C: return ",
        "metres to the ohm at 20 C: shared return ",

        // Heat.
        "by the heat balance alone ", "heat balance scaled to the nearest point of ", " C x sqrt((", " in a bundle",
        " in parallel", " C against insulation ", "table column ", "conductivity of copper-clad aluminium over copper = ",

        // Fuses.
        ", continuous use) = ", ", next standard rating ", " (continuous use, ", " (continuous use) x ", " (of that, at ",
        " of its rating: fast edge ", "rating ladder of ", "continuous current ", ", full load ", "it carries",
        "together they carry", ", one conductor is rated for ",

        // Short circuits and overloads.
        "battery \"", "\" alone, hot conductors, joints, fuses and body: ", "; certain from ", "smallest fault ",
        "opens within ", "heat balance with storage above", " (from memory); smallest fault ", " at the end of run \"",
        ", from memory", " by the batteries' cold-cranking current (ABYC E-11), by the computed current for ",
        "lithium; bolted at the fuse, every battery full: ", "heated at ", "ever, since opening is not certain",

        // Supply and the choice of conductors.
        " at idle", " base load, not below 0 = ", " on average; t = u H (C / (I H))^k: ", "rest voltage ", "work budget = ",
        " runs solved",

        // Cables on the bench.
        "; as copper: ", " x pi x (", "A = n pi d^2 / 4 = ", "A = rho k l (1 + alpha (T - 20)) / R = ", " ohm mm2/m x ",
    ];

    private static readonly IReadOnlyList<string> Literals = CompiledTexts.Of(typeof(Catalogue).Assembly);

    [Fact]
    public void No_literal_of_the_reports_is_a_sentence() =>
        Assert.Empty(Literals.Where(CompiledTexts.IsSentence).Except(NotSentences));

    /// <summary>What is left out above is there, so that the list does not outgrow the reports.</summary>
    [Fact]
    public void Every_exception_is_needed() => Assert.Empty(NotSentences.Except(Literals));
}
