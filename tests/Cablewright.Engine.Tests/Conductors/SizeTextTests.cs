using Cablewright.Engine.Conductors;
using Cablewright.Reports.Faults;
using CsCheck;

namespace Cablewright.Engine.Tests.Conductors;

public class SizeTextTests
{
    private static readonly Gen<string> TradeLikeText =
        Gen.Char["0123456789/. AWGawgm²2^sqmgaSAE,-+\t"].Array[0, 30].Select(letters => new string(letters));

    [Theory]
    [InlineData("4 AWG", "4 AWG")]
    [InlineData("4AWG", "4 AWG")]
    [InlineData("4 awg", "4 AWG")]
    [InlineData("AWG 4", "4 AWG")]
    [InlineData("AWG4", "4 AWG")]
    [InlineData("  4 AWG  ", "4 AWG")]
    [InlineData("22 AWG", "22 AWG")]
    [InlineData("0 AWG", "1/0 AWG")]
    [InlineData("0AWG", "1/0 AWG")]
    [InlineData("AWG 0", "1/0 AWG")]
    [InlineData("1/0 AWG", "1/0 AWG")]
    [InlineData("1/0AWG", "1/0 AWG")]
    [InlineData("AWG 1/0", "1/0 AWG")]
    [InlineData("00 AWG", "2/0 AWG")]
    [InlineData("2/0 AWG", "2/0 AWG")]
    [InlineData("000 AWG", "3/0 AWG")]
    [InlineData("0000 AWG", "4/0 AWG")]
    [InlineData("4/0 AWG", "4/0 AWG")]
    [InlineData("25 mm2", "25 mm2")]
    [InlineData("25mm2", "25 mm2")]
    [InlineData("25 mm²", "25 mm2")]
    [InlineData("25mm²", "25 mm2")]
    [InlineData("25 mm^2", "25 mm2")]
    [InlineData("25 MM2", "25 mm2")]
    [InlineData("25.0 mm2", "25 mm2")]
    [InlineData("2.5 sq mm", "2.5 mm2")]
    [InlineData("2.5 sq. mm", "2.5 mm2")]
    [InlineData("0.5 mm2", "0.5 mm2")]
    [InlineData("150 mm2", "150 mm2")]
    public void Reads_what_the_trade_writes(string text, string label) =>
        Assert.Same(ConductorSize.Of(label), ConductorSize.Parse(text).Size);

    /// <summary>
    /// As kits and their buyers write it (common practice, no source); only aught sizes need no word beside them.
    /// </summary>
    [Theory]
    [InlineData("4 gauge", "4 AWG")]
    [InlineData("4 ga", "4 AWG")]
    [InlineData("8GA.", "8 AWG")]
    [InlineData("0 gauge", "1/0 AWG")]
    [InlineData("00 Gauge", "2/0 AWG")]
    [InlineData("1/0", "1/0 AWG")]
    [InlineData("1/0ga", "1/0 AWG")]
    public void A_gauge_off_a_label_is_read_as_AWG_and_said_to_be_a_label(string text, string label) =>
        Assert.Equal(new SizeReading(ConductorSize.Of(label), null, IsLabel: true), ConductorSize.Parse(text));

    [Theory]
    [InlineData("", "expected")]
    [InlineData("   ", "expected")]
    [InlineData("4", "no unit")]
    [InlineData("25", "no unit")]
    [InlineData("23 AWG", "22 AWG to 4/0 AWG")]
    [InlineData("5/0 AWG", "conductor size")]
    [InlineData("0/0 AWG", "conductor size")]
    [InlineData("-4 AWG", "conductor size")]
    [InlineData("4.5 AWG", "conductor size")]
    [InlineData("00000 AWG", "conductor size")]
    [InlineData("26 mm2", "25 mm2, 30 mm2")]
    [InlineData("0 mm2", "not a standard size")]
    [InlineData("999 mm2", "120 mm2, 150 mm2")]
    [InlineData("2,5 mm2", "conductor size")]
    [InlineData("25 mm", "conductor size")]
    [InlineData("25 m2", "conductor size")]
    [InlineData("30 gauge", "22 AWG to 4/0 AWG")]
    [InlineData("5/0", "no unit")]
    [InlineData("gauge", "conductor size")]
    [InlineData("4 AWG and some more words here", "expected")]
    [InlineData("four AWG", "conductor size")]
    public void Refuses_the_rest_with_a_reason(string text, string reason)
    {
        SizeReading reading = ConductorSize.Parse(text);
        Assert.Null(reading.Size);
        Assert.Contains(reason, SizeProblemWriter.Text(reading.Problem!), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_label_reads_as_its_own_size() =>
        Assert.All(ConductorSize.All, size => Assert.Same(size, ConductorSize.Parse(size.Label).Size));

    [Fact]
    public void Any_text_gives_a_size_or_a_reason() =>
        Gen.OneOf(Gen.String, TradeLikeText).Sample(text =>
        {
            SizeReading reading = ConductorSize.Parse(text);
            return reading.Size is null != reading.Problem is null;
        }, iter: 20_000);
}
