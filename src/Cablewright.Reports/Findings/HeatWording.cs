using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Findings;

/// <summary>Words for conductors that get too hot or do not fit.</summary>
internal sealed class HeatWording(Variant variant, Remedies remedies)
{
    private readonly CompleteBuild build = variant.Build;
    private readonly Speech speech = variant.Build.Speech;
    private readonly BuildModel model = variant.Evaluator.Model;
    private readonly DesignEvaluation evaluation = variant.Sized.Evaluation;

    public Wording OverAmpacity(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        ConductorChoice choice = evaluation.Design.Conductors[violation.Index];
        return new Wording(
            run.Pointer + "/conductor",
            new Params
            {
                ["run"] = run.Id,
                ["amps"] = violation.Measured,
                ["conductor"] = choice.ToString(),
                ["ampacityAmps"] = violation.Limit,
                ["airCelsius"] = run.AirCelsius,
                ["celsius"] = evaluation.Envelope.Celsius[violation.Index],
            },
            AmpacityWorkings(violation.Index, choice),
            "A")
        {
            Remedy = speech.Text("remedy.run.over-ampacity", new Params
            {
                ["conductor"] = remedies.ConductorForLoad(violation.Index),
            }),
        };
    }

    public Wording TooHot(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        return new Wording(
            run.Pointer + "/conductor/insulationRating",
            new Params
            {
                ["run"] = run.Id,
                ["airCelsius"] = violation.Measured,
                ["insulationCelsius"] = violation.Limit,
            },
            $"surroundings {Phrase.Number(violation.Measured)} C against insulation {Phrase.Number(violation.Limit)} C, "
            + $"table column {build.Ruleset.Ampacity.ColumnFor(violation.Limit)} C",
            "C");
    }

    public Wording Terminal(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        ConductorChoice choice = evaluation.Design.Conductors[violation.Index];
        TerminalLimit terminal = run.Terminals.OrderBy(limit => limit.IsAssumed).First(limit => !limit.Takes(choice));
        bool several = terminal.Count is > 1 and < int.MaxValue;
        return new Wording(
            terminal.Pointer,
            new Params
            {
                ["run"] = run.Id,
                ["conductor"] = choice.ToString(),
                ["largest"] = terminal.Largest.Label,
                ["terminals"] = several ? terminal.Count : 1,
            },
            $"{Phrase.Number(violation.Measured)} mm2 against {Phrase.Number(violation.Limit)} mm2",
            "mm2")
        {
            Variant = (several ? ".several" : "") + (terminal.IsAssumed ? ".usual" : ""),
            Remedy = speech.Text("remedy.run.larger-than-terminal" + (terminal.IsAssumed ? ".usual" : ""), []),
        };
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
        new Params
        {
            ["run"] = build.Runs[violation.Index].Id,
            ["areaMm2"] = violation.Measured,
            ["leastMm2"] = violation.Limit,
        },
        $"{Phrase.Number(violation.Measured)} mm2 < {Phrase.Number(violation.Limit)} mm2",
        "mm2")
    {
        Variant = PlacesOf(violation.Index),
    };

    public Wording StrapBelowFuses(Violation violation)
    {
        int battery = violation.Index, run = violation.Other;
        string id = build.Batteries[battery].Id;
        bool isStated = run >= 0;
        bool isOfEngine = !isStated && build.Body.AtEngine.Contains(battery);
        string decided = isStated ? ".stated" : ".assumed", place = isStated ? PlacesOf(run) : isOfEngine ? ".engine" : "";
        Params values = new()
        {
            ["battery"] = id,
            ["ampacityAmps"] = violation.Limit,
            ["amps"] = violation.Measured,
        };
        return new Wording(
            isStated ? build.Runs[run].Pointer + "/conductor" : "/runs/-",
            values.And(isStated
                ? new Params { ["run"] = build.Runs[run].Id }
                : new Params { ["assumedMm2"] = build.Ruleset.Return.LeastStrap.Value }),
            $"{Phrase.Amps(violation.Measured)} > {Phrase.Amps(violation.Limit)}",
            "A")
        {
            Variant = decided + (isStated || violation.Severity is Severity.Info ? "" : ".overloaded")
                + place,
            Remedy = speech.Text("remedy.return.strap-below-fuse" + decided + place, []),
        };
    }

    /// <summary>Which of the vehicle's grounds a run is: a battery's strap, the engine's, or the cable between the two.</summary>
    private string PlacesOf(int run) =>
        !build.Runs[run].EndsAt(PlaceNames.Engine) ? "" : build.Runs[run].EndsAt(PlaceNames.Body) ? ".engine" : ".cable";

    public Wording CopperClad(Violation violation) => new(
        build.Runs[violation.Index].Pointer + "/conductor",
        new Params { ["run"] = build.Runs[violation.Index].Id },
        $"conductivity of copper-clad aluminium over copper = {Phrase.Percent(Clad)}");

    private static double Clad => MaterialProperties.Of(Material.Copper).ResistivityOhmMm2PerMetre
        / MaterialProperties.Of(Material.CopperCladAluminium).ResistivityOhmMm2PerMetre;
}
