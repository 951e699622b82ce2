using Cablewright.Engine.Audits;
using Cablewright.Reports.Messages;

namespace Cablewright.Reports.Audits;

/// <summary>Words for what a cable is found to be.</summary>
internal static class CableWords
{
    /// <summary>The gauge in words: <c>5.3 AWG</c>; from 1/0 upwards <c>1/0 AWG</c> or <c>between 2/0 and 1/0 AWG</c>.</summary>
    public static string Gauge(double areaMm2, Speech speech)
    {
        double gauge = Math.Round(TrueSize.Gauge(areaMm2), 1) + 0.0;
        if (gauge > 0) return Phrase.Number(gauge) + " AWG";
        string Naughts(double number) => Phrase.Number(1 - number) + "/0";
        return gauge == Math.Round(gauge)
            ? Naughts(gauge) + " AWG"
            : speech.Text("summary.cable.gauge-between", new Params
            {
                ["least"] = Naughts(Math.Floor(gauge)),
                ["most"] = Naughts(Math.Ceiling(gauge)),
            });
    }
}
