using Cablewright.Engine.Completion;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Designs;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Heat;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Text;
using Cablewright.Engine.Wiring;

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
            $"Run \"{run.Id}\" carries {Phrase.Amps(violation.Measured)} for long, and {choice} may carry "
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
            + $"table column {AmpacityTable.ColumnFor(violation.Limit)} C",
            "C");
    }

    public Wording Terminal(Violation violation)
    {
        CompleteRun run = build.Runs[violation.Index];
        ConductorSize size = evaluation.Design.Conductors[violation.Index].Conductor.Size;
        TerminalLimit terminal = run.Terminals.First(limit => !size.FitsWhere(limit.Largest));
        return new Wording(
            terminal.Pointer,
            $"Run \"{run.Id}\" is {size}, and a terminal that it ends in accepts at most {terminal.Largest}.",
            "a part that accepts the conductor, or a short piece that fits with a fuse of its own",
            $"{Phrase.Number(violation.Measured)} mm2 against {Phrase.Number(violation.Limit)} mm2",
            "mm2");
    }

    private string AmpacityWorkings(int index, ConductorChoice choice)
    {
        CompleteRun run = build.Runs[index];
        AmpacityFigures figures = model.Ampacities.Of(index, choice.Conductor);
        int column = AmpacityTable.ColumnFor(run.InsulationCelsius);
        string parallel = choice.Count > 1 ? $" x {choice.Count} in parallel" : "";
        string bundle = run.Bundling < 1 ? $" x {Phrase.Number(run.Bundling)} in a bundle" : "";
        double air = build.Ruleset.Heat.TableSurroundings.Value;
        string basis = figures.TableAmps is not null
            ? $"{AmpacityTable.Source}, {column} C, at {Phrase.Number(air)} C x sqrt(({column} - "
                + $"{Phrase.Number(Math.Max(air, run.AirCelsius))}) / ({column} - {Phrase.Number(air)})){bundle}"
            : $"heat balance scaled to the nearest point of {AmpacityTable.Source}, {column} C{bundle}";
        return $"ampacity = {Phrase.Amps(figures.LimitAmps)} each ({basis}){parallel}; "
            + $"by the heat balance alone {Phrase.Amps(figures.HeatBalanceAmps)} each";
    }
}
