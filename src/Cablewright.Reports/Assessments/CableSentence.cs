using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Assessments;

/// <summary>Which cable a build is made of, in a sentence that a customer can buy by.</summary>
internal sealed class CableSentence
{
    /// <summary>A sentence names so many pieces; the answer lists the rest.</summary>
    private const int MostNamed = 4;

    private readonly CompleteBuild build;
    private readonly Speech speech;
    private readonly SupplyTopology topology;
    private readonly Design design;
    private readonly int[] supplies;
    private readonly int[] grounds;

    public CableSentence(Variant variant)
    {
        build = variant.Build;
        speech = build.Speech;
        topology = variant.Evaluator.Model.Topology;
        design = variant.Sized.Evaluation.Design;
        supplies = [.. Runs(Side.Supply).Where(run => !build.IsAlternatorCable(build.Runs[run]))];
        CircuitModel circuit = variant.Evaluator.Model.Circuit;
        grounds = [.. Runs(Side.Return).Where(run => !circuit.IsStrap(run))];
    }

    /// <summary>The cable of every supply run and of the grounds.</summary>
    public string Cable()
    {
        int[] others = [.. grounds.Where(ground => !IsAsSupply(ground))];
        string key = grounds.Length == 0 ? "no-ground"
            : others.Length == grounds.Length ? "other-grounds"
            : others.Length > 0 ? "some-grounds"
            : grounds.Length == 1 ? "same-ground" : "same-grounds";
        return speech.Text("wiring." + key, new Params
        {
            ["supplies"] = Listed([.. supplies.Select(Supply)]),
            ["grounds"] = Listed([.. others.Select(run => Piece(run, "wiring.ground"))]),
        });
    }

    /// <summary>The fuses that were left out and have to be fitted; <c>null</c> where there are none.</summary>
    public string? FusesToFit()
    {
        string[] fuses = [.. topology.Outwards.Order().SelectMany(RunEnd.Of)
            .Where(end => design.FuseAt(end) is { Decided: Decided.Chosen }).Select(Fuse)];
        return fuses.Length == 0 ? null : speech.Text(
            fuses.Length == 1 ? "summary.fit-fuse" : "summary.fit-fuses", new Params { ["fuses"] = Listed(fuses) });
    }

    private IEnumerable<int> Runs(Side side) =>
        Enumerable.Range(0, build.Runs.Count).Where(run => build.Runs[run].Side == side);

    private string Supply(int run) => Piece(run, supplies.Length == 1 ? "wiring.piece" : "wiring.piece.between");

    /// <summary>Whether a ground is the same cable as the one supply of its amplifier.</summary>
    private bool IsAsSupply(int ground)
    {
        string from = build.Runs[ground].From, to = build.Runs[ground].To;
        int[] feeding = [.. supplies.Where(run => IsAt(run, from) || IsAt(run, to))];
        return feeding is [var supply] && design.Conductors[supply] == design.Conductors[ground];
    }

    private bool IsAt(int run, string place) =>
        build.Names[place].Kind is PlaceKind.Amplifier && build.Runs[run].EndsAt(place);

    private string Piece(int run, string key) => speech.Text(key, new Params
    {
        ["metres"] = build.Runs[run].LengthMetres,
        ["conductor"] = design.Conductors[run].ToString(),
        ["run"] = build.Runs[run].Id,
        ["from"] = build.Runs[run].From,
        ["to"] = build.Runs[run].To,
    });

    private string Fuse(RunEnd end)
    {
        FittedFuse fuse = design.FuseAt(end)!;
        string place = !topology.IsAtBattery(end) ? "wiring.at-place"
            : build.Batteries.Count > 1 ? "wiring.at-battery.named" : "wiring.at-battery";
        Params values = new()
        {
            ["ratingAmps"] = fuse.RatingAmps,
            ["family"] = fuse.Family.Name.Word(),
            ["count"] = design.Conductors[end.Run].Count,
            ["run"] = build.Runs[end.Run].Id,
            ["place"] = build.PlaceAt(end),
            ["distanceMetres"] = build.Ruleset.Fuse.MaxDistance.Value,
        };
        return speech.Text(
            "wiring.fuse" + (fuse.PerConductor ? ".each" : "") + (supplies.Length > 1 ? ".in-run" : ""),
            values.And(new Params { ["where"] = speech.Text(place, values) }));
    }

    private string Listed(string[] items)
    {
        if (items.Length <= 1) return items.FirstOrDefault("");
        int more = items.Length - MostNamed;
        return more > 0
            ? speech.Text("wiring.list.more", new Params { ["items"] = Joined(items.Take(MostNamed)), ["more"] = more })
            : speech.Text("wiring.list", new Params { ["items"] = Joined(items.SkipLast(1)), ["last"] = items[^1] });

        static string Joined(IEnumerable<string> some) => string.Join("; ", some);
    }
}
