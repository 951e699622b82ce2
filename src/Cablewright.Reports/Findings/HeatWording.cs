using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Findings;

/// <summary>Words for conductors that get too hot or do not fit.</summary>
internal sealed class HeatWording(Variant variant, Remedies remedies)
{
    private readonly CompleteBuild build = variant.Build;
    private readonly BuildModel model = variant.Evaluator.Model;
    private readonly DesignEvaluation evaluation = variant.Sized.Evaluation;

    public Wording OverAmpacity(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        ConductorChoice choice = evaluation.Design.Conductors[violation.Index];
        return new Wording(
            run.Pointer + "/conductor",
            $"Run \"{run.Id}\" carries {Phrase.Amps(violation.Measured)} continuous, and {choice} is rated for "
            + $"{Phrase.Amps(violation.Limit)} in surroundings of {build.Phrase.Temperature(run.AirCelsius)}; "
            + $"by the heat balance it would reach {build.Phrase.Temperature(evaluation.Envelope.Celsius[violation.Index])}.",
            remedies.ConductorForLoad(violation.Index) + "; or a cooler route",
            AmpacityWorkings(violation.Index, choice),
            "A");
    }

    public Wording TooHot(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        return new Wording(
            run.Pointer + "/conductor/insulationRating",
            $"Run \"{run.Id}\" lies in {build.Phrase.Temperature(violation.Measured)}, and its insulation is rated "
            + $"{build.Phrase.Temperature(violation.Limit)}: it may carry nothing there.",
            "cable with a higher insulation rating, or a cooler route",
            $"surroundings {Phrase.Number(violation.Measured)} C against insulation {Phrase.Number(violation.Limit)} C, "
            + $"table column {build.Ruleset.Ampacity.ColumnFor(violation.Limit)} C",
            "C");
    }

    public Wording Terminal(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        ConductorChoice choice = evaluation.Design.Conductors[violation.Index];
        TerminalLimit terminal = run.Terminals.OrderBy(limit => limit.IsAssumed).First(limit => !limit.Takes(choice));
        string accept = terminal.IsAssumed ? "usually accept" : "accept";
        bool several = terminal.Count is > 1 and < int.MaxValue;
        return new Wording(
            terminal.Pointer,
            $"Run \"{run.Id}\" is {choice}, and where it ends "
            + (several ? $"{terminal.Count} terminals {accept}" : $"the terminal {accept}s")
            + $" at most {terminal.Largest}{(several ? " each" : "")}.",
            (terminal.IsAssumed ? "state what it accepts; else " : "")
                + "a distribution block or a reducer before it, or a part that accepts the conductor; a shorter way needs less",
            $"{Phrase.Number(violation.Measured)} mm2 against {Phrase.Number(violation.Limit)} mm2",
            "mm2");
    }

    private string AmpacityWorkings(int index, ConductorChoice choice)
    {
        CompleteRun run = build.Runs[index];
        AmpacityFigures figures = model.Ampacities.Of(index, choice.Conductor);
        int column = build.Ruleset.Ampacity.ColumnFor(run.InsulationCelsius);
        string parallel = choice.Count > 1 ? $" x {choice.Count} in parallel" : "";
        string bundle = run.Bundling < 1 ? $" x {Phrase.Number(run.Bundling)} in a bundle" : "";
        double air = build.Ruleset.Heat.TableSurroundings.Value;
        string basis = figures.TableAmps is not null
            ? $"{build.Ruleset.Ampacity.Source}, {column} C, at {Phrase.Number(air)} C x sqrt(({column} - "
                + $"{Phrase.Number(Math.Max(air, run.AirCelsius))}) / ({column} - {Phrase.Number(air)})){bundle}"
            : $"heat balance scaled to the nearest point of {build.Ruleset.Ampacity.Source}, {column} C{bundle}";
        return $"ampacity = {Phrase.Amps(figures.LimitAmps)} each ({basis}){parallel}; "
            + $"by the heat balance alone {Phrase.Amps(figures.HeatBalanceAmps)} each";
    }

    public Wording Strap(Violation violation) => new(
        build.Runs[violation.Index].Pointer + "/conductor",
        $"The strap \"{build.Runs[violation.Index]
            .Id}\" from the battery to the body has {Phrase.Number(violation.Measured)} mm2 "
        + "of copper: it carries the starter's current and every short circuit of the vehicle, and wants "
        + $"{Phrase.Number(violation.Limit)} mm2 or more.",
        "the vehicle's own strap, or one at least as large as the largest feed",
        $"{Phrase.Number(violation.Measured)} mm2 < {Phrase.Number(violation.Limit)} mm2",
        "mm2");

    public Wording StrapBelowFuses(Violation violation)
    {
        int battery = violation.Index, run = model.Circuit.StrapOf(battery);
        string id = build.Batteries[battery].Id;
        bool isStated = run >= 0;
        string strap = isStated
            ? $"The strap \"{build.Runs[run].Id}\" from battery \"{id}\" to the body"
            : $"The strap of battery \"{id}\" to the body, which is not stated and taken to be of "
                + $"{Phrase.Number(build.Ruleset.Return.LeastStrap.Value)} mm2,";
        string load = isStated || violation.Severity is Severity.Info
            ? $"and the largest fuse at the battery lets {Phrase.Amps(violation.Measured)} through when a feed touches the body."
            : $"and would carry {Phrase.Amps(violation.Measured)} continuous.";
        return new Wording(
            isStated ? build.Runs[run].Pointer + "/conductor" : "/runs/-",
            $"{strap} is rated for {Phrase.Amps(violation.Limit)}, {load}",
            "a strap no smaller than the largest feed" + (isStated ? "" : ", stated as a run from the battery to the body"),
            $"{Phrase.Amps(violation.Measured)} > {Phrase.Amps(violation.Limit)}",
            "A");
    }

    public Wording CopperClad(Violation violation) => new(
        build.Runs[violation.Index].Pointer + "/conductor",
        $"Run \"{build.Runs[violation.Index].Id}\" is copper-clad aluminium: it conducts about two thirds of copper of its size, "
        + "which is counted here, and its ends loosen and corrode if they are not crimped well. It has no place in a boat.",
        "copper; or crimped and sealed ends, looked at again after a while",
        $"conductivity of copper-clad aluminium over copper = {Phrase.Percent(Clad)}");

    private static double Clad => MaterialProperties.Of(Material.Copper).ResistivityOhmMm2PerMetre
        / MaterialProperties.Of(Material.CopperCladAluminium).ResistivityOhmMm2PerMetre;
}
