using Cablewright.Engine.Completion;
using Cablewright.Engine.Variations;

namespace Cablewright.Reports.Assessments;

/// <summary>Says what is off by its tolerance.</summary>
internal sealed class ToleranceWording(CompleteBuild build)
{
    private readonly CompleteTolerances tolerances = build.Tolerances!;

    public string Of(IReadOnlyList<Deviation> deviations) => string.Join(" and ", deviations.Select(Word));

    private string Word(Deviation part)
    {
        return part.What switch
        {
            Tolerance.Efficiency => $"efficiency {Phrase.Percent(tolerances.EfficiencyShare)} {Way("higher", "lower")}",
            Tolerance.ChargingVoltage => $"charging voltage {Phrase.Volts(tolerances.ChargingVolts)} {Way("higher", "lower")}",
            Tolerance.Length => $"lengths {Phrase.Percent(tolerances.LengthShare)} {Way("longer", "shorter")}",
            _ => $"surroundings {build.Phrase.TemperatureDifference(tolerances.Kelvin)} {Way("hotter", "cooler")}",
        };

        string Way(string more, string less) => part.Way > 0 ? more : less;
    }
}
