using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Assessments;

/// <summary>Which cable a build is made of, in a sentence that a customer can buy by.</summary>
internal sealed class CableSentence
{
    /// <summary>A sentence names so many pieces; the answer lists the rest.</summary>
    private const int MostNamed = 4;

    private readonly CompleteBuild build;
    private readonly SupplyTopology topology;
    private readonly Design design;
    private readonly int[] supplies;
    private readonly int[] grounds;

    public CableSentence(Variant variant)
    {
        build = variant.Build;
        topology = variant.Evaluator.Model.Topology;
        design = variant.Sized.Evaluation.Design;
        supplies = [.. Runs(Side.Supply).Where(run => !build.IsAlternatorCable(build.Runs[run]))];
        CircuitModel circuit = variant.Evaluator.Model.Circuit;
        grounds = [.. Runs(Side.Return).Where(run => !circuit.IsStrap(run))];
    }

    /// <summary>The cable of every supply run and of the grounds.</summary>
    public string Cable() => Listed([.. supplies.Select(Supply)]) + Grounds();

    /// <summary>The fuses that were left out and have to be fitted; empty where there are none.</summary>
    public string FusesToFit()
    {
        string[] fuses = [.. topology.Outwards.Order().SelectMany(RunEnd.Of)
            .Where(end => design.FuseAt(end) is { Decided: Decided.Chosen }).Select(Fuse)];
        return fuses.Length == 0 ? "" : $" FIT {(fuses.Length == 1 ? "A FUSE" : "FUSES")} of {Listed(fuses)}.";
    }

    private IEnumerable<int> Runs(Side side) =>
        Enumerable.Range(0, build.Runs.Count).Where(run => build.Runs[run].Side == side);

    private string Supply(int run) => supplies.Length == 1
        ? Piece(run)
        : $"{Piece(run)} from \"{build.Runs[run].From}\" to \"{build.Runs[run].To}\"";

    private string Grounds()
    {
        int[] others = [.. grounds.Where(ground => !IsAsSupply(ground))];
        bool isOne = grounds.Length == 1;
        string same = grounds.Length == others.Length ? ""
            : others.Length > 0 ? ", the same for the grounds of the amplifiers"
            : $", and the same for the {(isOne ? "ground" : "grounds")}";
        return others.Length == 0 ? same
            : $"{same}, and {Listed([.. others.Select(run => $"{Piece(run)} for the ground \"{build.Runs[run].Id}\"")])}";
    }

    /// <summary>Whether a ground is the same cable as the one supply of its amplifier.</summary>
    private bool IsAsSupply(int ground)
    {
        string from = build.Runs[ground].From, to = build.Runs[ground].To;
        int[] feeding = [.. supplies.Where(run => IsAt(run, from) || IsAt(run, to))];
        return feeding is [var supply] && design.Conductors[supply] == design.Conductors[ground];
    }

    private bool IsAt(int run, string place) => build.Names[place].Kind is PlaceKind.Amplifier
        && (build.Runs[run].From == place || build.Runs[run].To == place);

    private string Piece(int run)
    {
        ConductorChoice choice = design.Conductors[run];
        return $"{build.Phrase.Length(build.Runs[run].LengthMetres)} of {choice}";
    }

    private string Fuse(RunEnd end)
    {
        FittedFuse fuse = design.FuseAt(end)!;
        int count = design.Conductors[end.Run].Count;
        string each = fuse.PerConductor ? $" for each of the {count} conductors" : "";
        string place = topology.IsAtBattery(end)
            ? $"within {build.Phrase.Length(build.Ruleset.Fuse.MaxDistance.Value)} of the battery"
                + (build.Batteries.Count > 1 ? $" \"{build.PlaceAt(end)}\"" : "")
            : $"at \"{build.PlaceAt(end)}\"";
        string run = supplies.Length > 1 ? $" in run \"{build.Runs[end.Run].Id}\"" : "";
        return $"{Phrase.Amps(fuse.RatingAmps)} ({fuse.Family.Name.Word()}){each}{run} {place}";
    }

    private static string Listed(string[] items)
    {
        if (items.Length <= 1) return items.FirstOrDefault("");
        int more = items.Length - MostNamed;
        return more > 0
            ? string.Join("; ", items.Take(MostNamed)) + $"; and {more} more as listed"
            : string.Join("; ", items.SkipLast(1)) + "; and " + items[^1];
    }
}
