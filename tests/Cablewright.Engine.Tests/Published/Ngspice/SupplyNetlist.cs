using System.Globalization;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Tests.Supply;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published.Ngspice;

/// <summary>
/// The supply of a build with its batteries at their own voltage, put together here from the places' names alone. Of the engine's
/// it uses the resistance of each run when warm and the rest voltage of each battery.
/// </summary>
/// <param name="rig">The build.</param>
/// <param name="givenAmps">What the alternator gives; <c>null</c>: the engine is off.</param>
/// <param name="vehicleAmps">What the vehicle itself takes.</param>
internal sealed class SupplyNetlist(SupplyRig rig, double? givenAmps, double vehicleAmps)
{
    /// <summary>A conducting diode's current turns on within a thousandth of a volt of its forward voltage.</summary>
    private const string NearlyIdealDiode = ".model nearly d(is=1e-12 n=0.001)";
    private const double CollapsedVolts = 2;
    private const double BesideFarads = 1e-5;
    private const string Options = ".options reltol=1e-10 abstol=1e-12 vntol=1e-12 gmin=1e-15";

    private readonly Build build = rig.Build;
    private readonly string first = rig.Build.Vehicle.Batteries[0].Id;

    private bool IsOff => givenAmps is null;

    /// <summary>Prints the voltage across each amplifier at rest, with batteries fully settled and capacitors away.</summary>
    public string OperatingPoint() => string.Join('\n',
    [
        "* batteries at their own voltage", .. Common(AtRest),
        .. build.Vehicle.Batteries.SelectMany((battery, i) => Settled(battery, i)),
        .. build.Amplifiers.Select(
            amplifier => Line($".nodeset v({Node(amplifier.Id, Side.Supply)})={rig.Complete.Batteries[0].RestVolts:R}")),
        Options, ".control", "set numdgt=15", "op",
        .. build.Amplifiers.Select(amplifier => $"let across_{amplifier.Id} = {Across(amplifier)}\nprint across_{amplifier.Id}"),
        "quit 0", ".endc", ".end", "",
    ]);

    /// <summary>
    /// Prints the lowest voltage across each amplifier from 10 µs to some times, all at the charging voltage at first and nothing
    /// settled yet.
    /// </summary>
    /// <remarks>
    /// About the moment from which a circuit of constant powers has no solution the simulator may creep for ever. So each has ten
    /// microfarads beside it, settled within a fraction of the first 10 µs, and below <see cref="CollapsedVolts"/> draws a
    /// constant current: then the voltage falls on through that, and the simulator goes on.
    /// </remarks>
    public string Transient(IReadOnlyList<double> seconds, bool withCapacitors) => string.Join('\n',
    [
        "* a burst", .. Common(InTime), .. build.Vehicle.Batteries.SelectMany((battery, i) => Settling(battery, i)),
        .. withCapacitors ? build.Vehicle.Capacitors.SelectMany(Capacitor) : [],
        .. SupplyNodes().Select(node => Line($".ic v({node})={build.Vehicle.ChargingVolts!.Value:R}")),
        ".options reltol=1e-6 abstol=1e-9 vntol=1e-9 method=gear", ".control", "set numdgt=15",
        .. seconds.SelectMany(Until),
        "quit 0", ".endc", ".end", "",
    ]);

    /// <summary>
    /// Whether every load of constant power was held: the voltage did not collapse, nor did the simulator give up.
    /// </summary>
    public bool IsHeld(Dictionary<string, double> printed, double seconds) =>
        printed.GetValueOrDefault(Reached(seconds)) > 0.999 * seconds
        && Powers().All(power => printed[Least(power.Name, seconds)] > CollapsedVolts);

    private static string Reached(double seconds) => Line($"reached_{1e6 * seconds:0}us");

    private static string Least(string power, double seconds) => Line($"least_{power}_{1e6 * seconds:0}us");

    public static string Name(string amplifier, double seconds) => Line($"lowest_{amplifier}_{1e6 * seconds:0}us");

    private IEnumerable<string> Until(double seconds)
    {
        yield return Line($"tran {seconds / 2000:R} {seconds:R} 1e-5 {seconds / 2000:R} uic");
        yield return $"let {Reached(seconds)} = time[length(time)-1]\nprint {Reached(seconds)}";
        foreach (Amplifier amplifier in build.Amplifiers)
        {
            string name = Name(amplifier.Id, seconds);
            yield return $"let {name} = vecmin({Across(amplifier)})\nprint {name}";
        }

        foreach (Power power in Powers())
        {
            string name = Least(power.Name, seconds);
            yield return $"let {name} = vecmin(v({power.From})-v({power.To}))\nprint {name}";
        }
    }

    private IEnumerable<string> Common(Func<Power, string> draw)
    {
        yield return NearlyIdealDiode;
        foreach (Battery battery in build.Vehicle.Batteries)
            yield return Line($"Rbody_{battery.Id} body foot_{battery.Id} {build.Vehicle.BodyReturnOhms!.Value:R}");
        foreach (string line in build.Runs.SelectMany(Wire)) yield return line;
        foreach (Amplifier amplifier in build.Amplifiers.Where(IsUnregulated)) yield return Resistance(amplifier);
        foreach (Power power in Powers()) yield return draw(power);
        bool isApart = build.Vehicle.Alternator?.At is not null;
        yield return Line($"Icharging 0 {Node(isApart ? "alternator" : first, Side.Supply)} {givenAmps ?? 0:R}");
        yield return Line($"Ivehicle {Node(first, Side.Supply)} 0 {vehicleAmps:R}");
    }

    private IEnumerable<string> Wire(Run run, int index)
    {
        Side side = rig.Complete.Runs[index].Side;
        string name = run.Id.Replace('-', '_'), from = End(run, run.From, side), to = End(run, run.To, side);
        double ohms = IsOff && run.Isolator is not null ? 1e9 : rig.Envelope.Ohms[index];
        if (run.Isolator is { Kind: IsolatorKind.Diode, ForwardVolts: { } volts })
        {
            yield return $"D{name} {from} anode_{name} nearly";
            yield return Line($"VF{name} anode_{name} behind_{name} {volts:R}");
            yield return Line($"R{name} behind_{name} {to} {ohms:R}");
        }
        else if (run.Isolator is { Kind: IsolatorKind.DcDcCharger, RatedAmps: { } amps } charger)
        {
            yield return Line($"R{name} {from} input_{name} {ohms:R}");
            if (IsOff) yield return $"Rinput_{name} input_{name} body 1e9";
            yield return Line($"Ioutput_{name} body {to} {(IsOff ? 0 : amps):R}");
        }
        else yield return Line($"R{name} {from} {to} {ohms:R}");
    }

    /// <summary>Regulated amplifiers, and chargers while the engine runs.</summary>
    private IEnumerable<Power> Powers()
    {
        foreach (Amplifier amplifier in build.Amplifiers.Where(amplifier => !IsUnregulated(amplifier)))
        {
            yield return new Power(
                amplifier.Id, Node(amplifier.Id, Side.Supply), Node(amplifier.Id, Side.Return), InputWatts(amplifier));
        }

        if (IsOff) yield break;
        foreach (Run run in build.Runs)
        {
            if (run.Isolator is not { Kind: IsolatorKind.DcDcCharger, RatedAmps: { } amps } charger) continue;
            string input = "input_" + run.Id.Replace('-', '_');
            yield return new Power(input, input, "body", charger.OutputVolts!.Value * amps / charger.Efficiency!.Value);
        }
    }

    private static string AtRest(Power power) =>
        Line($"B_{power.Name} {power.From} {power.To} I={power.Watts:R}/V({power.From},{power.To})");

    private string InTime(Power power) => string.Join('\n',
    [
        Line($"B_{power.Name} {power.From} {power.To} I={power.Watts:R}/max(V({power.From},{power.To}),{CollapsedVolts:R})"),
        Line($"CB_{power.Name} {power.From} {power.To} {BesideFarads:R} ic={build.Vehicle.ChargingVolts!.Value:R}"),
    ]);

    /// <summary>The resistance that draws the rated input at 14.4 V (ANSI/CTA-2006).</summary>
    private string Resistance(Amplifier amplifier)
    {
        string positive = Node(amplifier.Id, Side.Supply), negative = Node(amplifier.Id, Side.Return);
        return Line($"RL_{amplifier.Id} {positive} {negative} {14.4 * 14.4 / InputWatts(amplifier):R}");
    }

    private static bool IsUnregulated(Amplifier amplifier) => amplifier.PowerSupply is PowerSupply.Unregulated;

    private static double InputWatts(Amplifier amplifier) => amplifier.RatedOutputWatts!.Value / amplifier.Efficiency!.Value;

    private IEnumerable<string> Settled(Battery battery, int index)
    {
        double ohms = battery.InternalOhms!.Value + battery.Polarisation.Sum(part => part.Ohms);
        yield return Line(
            $"V_{battery.Id} e_{battery.Id} {Node(battery.Id, Side.Return)} {rig.Complete.Batteries[index].RestVolts:R}");
        yield return Line($"R_{battery.Id} e_{battery.Id} {Node(battery.Id, Side.Supply)} {ohms:R}");
    }

    private IEnumerable<string> Settling(Battery battery, int index)
    {
        yield return Line(
            $"V_{battery.Id} e_{battery.Id}_0 {Node(battery.Id, Side.Return)} {rig.Complete.Batteries[index].RestVolts:R}");
        for (int i = 0; i < battery.Polarisation.Count; i++)
        {
            Polarisation part = battery.Polarisation[i];
            string ends = Line($"e_{battery.Id}_{i} e_{battery.Id}_{i + 1}");
            yield return Line($"RP_{battery.Id}_{i} {ends} {part.Ohms:R}");
            yield return Line($"CP_{battery.Id}_{i} {ends} {part.Seconds / part.Ohms:R} ic=0");
        }

        string across = Line($"e_{battery.Id}_{battery.Polarisation.Count} {Node(battery.Id, Side.Supply)}");
        yield return Line($"R_{battery.Id} {across} {battery.InternalOhms!.Value:R}");
    }

    private IEnumerable<string> Capacitor(Capacitor capacitor, int index)
    {
        string charged = Line($"ic={build.Vehicle.ChargingVolts!.Value:R}");
        yield return Line($"CS{index} {Node(capacitor.At, Side.Supply)} cs{index} {capacitor.Farads:R} {charged}");
        yield return Line($"RS{index} cs{index} {Node(capacitor.At, Side.Return)} {capacitor.SeriesOhms!.Value:R}");
    }

    /// <summary>The simulator begins at these potentials, above any solution, and so comes to the upper one.</summary>
    private IEnumerable<string> SupplyNodes() => build.Runs.Where((run, i) => rig.Complete.Runs[i].Side is Side.Supply)
        .SelectMany(run => new[] { Node(run.From, Side.Supply), Node(run.To, Side.Supply) }
            .Concat(run.Isolator is { Kind: IsolatorKind.DcDcCharger } ? ["input_" + run.Id] : []))
        .Distinct();

    private string End(Run run, string place, Side side)
    {
        if (place != "body") return Node(place, side);
        string other = run.From == place ? run.To : run.From;
        return build.Vehicle.Batteries.Any(battery => battery.Id == other) ? "foot_" + other : "body";
    }

    private string Node(string place, Side side) =>
        side is Side.Return && place == first ? "0" : (side is Side.Supply ? "s_" : "r_") + place;

    private string Across(Amplifier amplifier) => $"{Volts(amplifier, Side.Supply)}-{Volts(amplifier, Side.Return)}";

    private string Volts(Amplifier amplifier, Side side) => $"v({Node(amplifier.Id, side)})";

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>What draws a constant power between two nodes.</summary>
    private readonly record struct Power(string Name, string From, string To, double Watts);
}
