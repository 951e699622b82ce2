using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Materials;

/// <summary>One run as a piece of cable to be cut.</summary>
/// <param name="Run">The run.</param>
/// <param name="CutMetres">Length of one conductor with the allowance for bends and ends.</param>
/// <param name="RingTerminals">How many of its ends sit on a stud: a battery's or the body's.</param>
/// <param name="IsVehicles">Whether the vehicle has it already: the starter battery's strap, the alternator's cable.</param>
internal sealed record WirePiece(DesignedRun Run, double CutMetres, int RingTerminals, bool IsVehicles)
{
    /// <summary>How many of its ends sit in an amplifier's terminal.</summary>
    public int AmplifierEnds { get; init; }

    /// <summary>The largest size that the amplifier's terminal accepts, where that is less than its own.</summary>
    public ConductorSize? ReducedTo { get; init; }
}

/// <summary>A junction of the supply side that parts one run into several.</summary>
/// <param name="Place">Its place.</param>
/// <param name="Ways">How many runs meet there beyond the one that feeds it.</param>
internal sealed record BlockNeed(string Place, int Ways);

/// <summary>What a job needs beyond the conductors themselves.</summary>
internal sealed class BillOfMaterials
{
    private readonly CompleteBuild build;
    private readonly string chargingBattery;
    private readonly Dictionary<string, (int Ends, int BesideEngine)> meetings = new(StringComparer.Ordinal);

    public BillOfMaterials(Variant variant)
        : this(variant.Build, variant.Runs)
    {
    }

    public BillOfMaterials(CompleteBuild build, IReadOnlyList<DesignedRun> runs)
    {
        this.build = build;
        chargingBattery = build.Batteries[build.ChargingBattery].Id;
        foreach (DesignedRun run in runs)
        {
            Meet(run.Run.From, run);
            Meet(run.Run.To, run);
        }

        double allowance = 1 + build.Ruleset.Materials.CutAllowance.Value;
        Pieces = [.. runs.Select(
            run => new WirePiece(run, run.Run.LengthMetres * allowance, Ends(run, IsStud) * run.Choice.Count, IsVehicles(run))
            {
                AmplifierEnds = Ends(run, IsAmplifier) * run.Choice.Count,
                ReducedTo = ReducedTo(run),
            })];
        Grommets = [.. runs.Where(PassesBulkhead)];
        LoomMetres = runs.Sum(Loom);
        Ties = (int)Math.Ceiling(
            runs.Where(run => run.Run.Side is Side.Supply && !IsVehicles(run)).Sum(run => run.Run.LengthMetres)
            / build.Ruleset.Materials.TieSpacing.Value);
        Blocks = [.. runs.Where(run => run.Run.Side is Side.Supply).SelectMany(run => new[] { run.Run.From, run.Run.To })
            .Where(IsJunction).GroupBy(place => place)
            .Where(meeting => meeting.Count() > 2)
            .Select(meeting => new BlockNeed(meeting.Key, meeting.Count() - 1))];
    }

    /// <summary>Every run as a piece of cable, in the order of the assessment.</summary>
    public IReadOnlyList<WirePiece> Pieces { get; }

    /// <summary>The runs that pass from the engine bay through a metal wall.</summary>
    public IReadOnlyList<DesignedRun> Grommets { get; }

    /// <summary>Split loom for what lies in the engine bay, in metres.</summary>
    public double LoomMetres { get; }

    /// <summary>The distribution blocks.</summary>
    public IReadOnlyList<BlockNeed> Blocks { get; }

    /// <summary>Ties or clamps along the supply.</summary>
    public int Ties { get; }

    /// <summary>Length of the turn-on lead and of each signal interconnect, in metres.</summary>
    public double SignalMetres => build.Ruleset.Kit.SignalLength.Value;

    /// <summary>How many amplifiers want a turn-on lead and a signal.</summary>
    public int Amplifiers => build.Draws.Count;

    /// <summary>Ring terminals beside those of the vehicle's own cables.</summary>
    public int RingTerminals => Pieces.Where(piece => !piece.IsVehicles).Sum(piece => piece.RingTerminals);

    private static int Ends(DesignedRun run, Func<string, bool> isThere) =>
        (isThere(run.Run.From) ? 1 : 0) + (isThere(run.Run.To) ? 1 : 0);

    private bool IsStud(string place) => build.Names[place].Kind is PlaceKind.Battery || build.Names[place].Kind.IsGround;

    private bool IsAmplifier(string place) => build.Names[place].Kind is PlaceKind.Amplifier;

    private static ConductorSize? ReducedTo(DesignedRun run) => run.Run.Terminals
        .Where(limit => limit.At.Part is Part.Amplifier && !run.Choice.Conductor.Size.FitsWhere(limit.Largest))
        .Select(limit => limit.Largest)
        .MinBy(size => size.NominalAreaMm2);

    private bool IsJunction(string place) => build.Names[place].Kind is PlaceKind.Junction;

    private bool IsVehicles(DesignedRun run) =>
        build.IsAlternatorCable(run.Run)
        || (run.Run.Side is Side.Return && IsVehicles(run.Run.From) && IsVehicles(run.Run.To));

    private bool IsVehicles(string place) => place == chargingBattery || place is PlaceNames.Body or PlaceNames.Engine;

    /// <summary>
    /// A battery or junction is under the bonnet where runs beside the engine end: one for the battery, all for others.
    /// </summary>
    private bool IsUnderBonnet(string place)
    {
        (int ends, int besideEngine) = meetings[place];
        return place == build.AlternatorPlace || place == PlaceNames.Engine
            || (place == chargingBattery ? besideEngine > 0 : IsJunction(place) && ends > 1 && besideEngine == ends);
    }

    private void Meet(string place, DesignedRun run)
    {
        (int ends, int besideEngine) = meetings.GetValueOrDefault(place);
        meetings[place] = (ends + 1, besideEngine + (run.Run.Route is Route.EngineBay ? 1 : 0));
    }

    private bool PassesBulkhead(DesignedRun run) =>
        !run.Run.EndsAt(PlaceNames.Body) && IsUnderBonnet(run.Run.From) != IsUnderBonnet(run.Run.To);

    private double Loom(DesignedRun run)
    {
        if (IsVehicles(run)) return 0;
        if (PassesBulkhead(run)) return Math.Min(run.Run.LengthMetres, build.Ruleset.Materials.LoomLength.Value);
        return IsUnderBonnet(run.Run.From) && IsUnderBonnet(run.Run.To) ? run.Run.LengthMetres : 0;
    }
}
