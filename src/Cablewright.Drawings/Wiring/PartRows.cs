using System.Globalization;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Drawings.Text;
using Cablewright.Vocabulary;
using static Cablewright.Contract.ContractLimits;

namespace Cablewright.Drawings.Wiring;

/// <summary>The rows of what stands at places.</summary>
internal sealed class PartRows(Build build, Assessment answer, WiringGraph graph)
{
    private readonly Dictionary<string, BatteryResult> batteries =
        answer.Supply.Batteries.DistinctBy(battery => battery.Id).ToDictionary(battery => battery.Id);

    private readonly Dictionary<string, AmplifierResult> amplifiers =
        answer.Amplifiers.DistinctBy(amplifier => amplifier.Id).ToDictionary(amplifier => amplifier.Id);

    /// <summary>What stands at a supply terminal, what has a way back of its own last.</summary>
    public IEnumerable<Row> At(string place, Track track)
    {
        if (graph.ChargingPlace == place) yield return Charging(track);
        foreach ((int number, CapacitorResult capacitor) in answer.Supply.Capacitors.Index())
        {
            if (capacitor.At == place) yield return Capacitor(number, capacitor, track);
        }

        if (graph.KindOf(place) is PlaceKind.Battery) yield return Battery(batteries[place], track);
        if (graph.KindOf(place) is PlaceKind.Amplifier) yield return Amplifier(amplifiers[place], track);
        if (graph.KindOf(place) is PlaceKind.Junction) yield return Block(
            $"Distribution block \"{Names.Clean(NameOf(place))}\"", place, track);
    }

    private string NameOf(string junction) =>
        build.Junctions?.FirstOrDefault(each => each.Id == junction)?.Name ?? junction;

    /// <summary>A place where several ways back meet.</summary>
    public static Row Ground(string place, Track track) =>
        Block(place == EnginePlace ? "Engine block" : $"Common ground \"{place}\"", place, track);

    /// <summary>The end of a run at the body.</summary>
    public static Row Body(Track track) => new(track, [new Item("body", false) { Symbol = SymbolKind.Frame }]);

    private static Row Block(string words, string place, Track track) =>
        new(track, [new Item(Names.Clean(words), true) { Symbol = SymbolKind.Block }]) { Part = new(PartKind.Place, place) };

    private Row Charging(Track track)
    {
        Vehicle vehicle = build.Vehicle!;
        bool isConverter = vehicle.Alternator is null;
        string? rated = vehicle.Alternator?.RatedCurrent ?? vehicle.Converter?.RatedCurrent ?? vehicle.Converter?.RatedPower;
        int count = vehicle.Alternator?.Count ?? 1;
        string name = isConverter ? "Converter" : "Alternator";
        string words = (count > 1 ? count.ToString(CultureInfo.InvariantCulture) + " alternators" : name)
            + (rated is null ? "" : ", " + Names.Clean(rated));
        return Across(
            words, isConverter ? SymbolKind.Converter : SymbolKind.Alternator, track, new(PartKind.Charging, ""), true,
            !isConverter && graph.HasAlternatorOnEngine ? "its case sits on the engine" : null);
    }

    private static Row Capacitor(int number, CapacitorResult capacitor, Track track) => Across(
        $"Capacitor, {Figures.Number(capacitor.Farads)} F", SymbolKind.Capacitor, track,
        new(PartKind.Capacitor, number.ToString(CultureInfo.InvariantCulture)), true);

    private Row Battery(BatteryResult battery, Track track) => Across(
        $"Battery \"{Names.Clean(battery.Name ?? battery.Id)}\"", SymbolKind.Battery, track, new(PartKind.Place, battery.Id),
        HasNoReturn(battery.Id),
        $"{battery.Chemistry.Word()}, {Figures.Number(battery.CapacityAmpHours)} Ah");

    private Row Amplifier(AmplifierResult amplifier, Track track)
    {
        string gets = $"{Figures.Amps(amplifier.PeakCurrentAmps)} at full output, gets {Figures.Volts(amplifier.TerminalVolts)}";
        return Across(
            $"Amplifier \"{Names.Clean(amplifier.Name ?? amplifier.Id)}\"", SymbolKind.Amplifier, track,
            new(PartKind.Place, amplifier.Id),
            HasNoReturn(amplifier.Id), gets);
    }

    private bool HasNoReturn(string place) => graph.At(new Terminal(place, Side.Return)).Count == 0;

    private static Row Across(string words, SymbolKind symbol, Track track, Part part, bool endsInFrame, string? further = null)
    {
        var first = new Item(words, true) { Symbol = symbol, IsAcross = true, EndsInFrame = endsInFrame };
        return new Row(track, further is null ? [first] : [first, new Item(further, false)]) { Part = part };
    }
}
