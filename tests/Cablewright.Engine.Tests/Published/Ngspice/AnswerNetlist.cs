using System.Globalization;
using Cablewright.Engine.Builds;
using Cablewright.Contract.Assessments;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published.Ngspice;

/// <summary>
/// The circuit of a build and its answer, put together here from the places' names alone: a battery's and an amplifier's
/// terminals by side, the body with its resistance to the foot of the battery's strap, each run at the resistance that the answer
/// reports.
/// </summary>
internal sealed class AnswerNetlist(Build build, Assessment answer)
{
    private readonly string battery = build.Vehicle.Batteries.Single().Id;

    public string Text()
    {
        List<string> lines = ["* one battery, every run at its reported resistance"];
        lines.Add(Line($"Vcharging {Node(battery, Side.Supply)} 0 {build.Vehicle.ChargingVolts!.Value:R}"));
        lines.Add(Line($"Rbody body foot {build.Vehicle.BodyReturnOhms!.Value:R}"));
        foreach (RunResult run in answer.Runs)
            lines.Add(Line($"R_{Name(run.Id)} {End(run.From, run)} {End(run.To, run)} {run.ResistanceMilliohms / 1000:R}"));
        lines.AddRange(build.Amplifiers.Select(Load));
        lines.AddRange(build.Amplifiers.Select(
            amplifier => Line($".nodeset v({Node(amplifier.Id, Side.Supply)})={build.Vehicle.ChargingVolts!.Value:R}")));
        lines.AddRange([".options reltol=1e-10 abstol=1e-14 vntol=1e-12 gmin=1e-15", ".control", "set numdgt=15", "op"]);
        foreach (Amplifier amplifier in build.Amplifiers)
            lines.Add(
                $"let across_{amplifier.Id} = v({Node(amplifier.Id, Side.Supply)})-v({Node(amplifier.Id, Side.Return)})\n"
                + $"print across_{amplifier.Id}");
        foreach (RunResult run in answer.Runs)
            lines.Add(
                $"let drop_{Name(run.Id)} = {Volts(End(run.From, run))}-{Volts(End(run.To, run))}\nprint drop_{Name(run.Id)}");
        lines.AddRange(["quit 0", ".endc", ".end", ""]);
        return string.Join('\n', lines);
    }

    public static string Name(string run) => run.Replace('-', '_');

    /// <summary>
    /// Regulated: P = rated output over efficiency; unregulated: the resistance that draws that at 14.4 V (ANSI/CTA-2006).
    /// </summary>
    private static string Load(Amplifier amplifier)
    {
        double watts = amplifier.RatedOutputWatts!.Value / amplifier.Efficiency!.Value;
        string positive = Node(amplifier.Id, Side.Supply), negative = Node(amplifier.Id, Side.Return);
        return amplifier.PowerSupply is PowerSupply.Unregulated
            ? Line($"RL_{amplifier.Id} {positive} {negative} {14.4 * 14.4 / watts:R}")
            : Line($"B_{amplifier.Id} {positive} {negative} I={watts:R}/V({positive},{negative})");
    }

    private string End(string place, RunResult run)
    {
        if (place != "body") return place == battery && run.Side is Side.Return ? "0" : Node(place, run.Side);
        return run.From == battery || run.To == battery ? "foot" : "body";
    }

    private static string Node(string place, Side side) => (side is Side.Supply ? "s_" : "r_") + place;

    private static string Volts(string node) => node == "0" ? "0" : $"v({node})";

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
