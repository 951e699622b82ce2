using Cablewright.Engine.Completion;
using Cablewright.Engine.Variations;
using Cablewright.Reports.Messages;

namespace Cablewright.Reports.Assessments;

/// <summary>Says what is off by its tolerance.</summary>
internal sealed class ToleranceWording(CompleteBuild build)
{
    private readonly Speech speech = build.Speech;
    private readonly CompleteTolerances tolerances = build.Tolerances!;

    public string Of(IReadOnlyList<Deviation> deviations) =>
        string.Join(speech.Text("tolerance.and", []), deviations.Select(Text));

    private string Text(Deviation part) => speech.Text(
        $"tolerance.{Keys.Of(part.What)}.{(part.Way > 0 ? "more" : "less")}",
        part.What switch
        {
            Tolerance.Efficiency => new Params { ["share"] = tolerances.EfficiencyShare },
            Tolerance.ChargingVoltage => new Params { ["volts"] = tolerances.ChargingVolts },
            Tolerance.Length => new Params { ["share"] = tolerances.LengthShare },
            _ => new Params { ["kelvin"] = tolerances.Kelvin },
        });
}
