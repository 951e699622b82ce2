using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Completion;

/// <summary>A value that was not stated.</summary>
/// <param name="Kind">What it is, and why it was taken.</param>
/// <param name="At">What it stands for.</param>
/// <param name="Basis">The figure that it rests on, if any.</param>
internal record Assumption(AssumptionKind Kind, Target At, Figure? Basis = null);

/// <summary>A number.</summary>
/// <param name="Kind">What it is, and why it was taken.</param>
/// <param name="At">What it stands for.</param>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit, as rulesets write it.</param>
/// <param name="Basis">The figure that it rests on, if any.</param>
internal sealed record AssumedFigure(AssumptionKind Kind, Target At, double Value, string Unit, Figure? Basis)
    : Assumption(Kind, At, Basis)
{
    /// <summary>The capacity that it follows from, where it does.</summary>
    public double AmpHours { get; init; }

    /// <summary>The most that it may be, where that counts too.</summary>
    public Figure? Most { get; init; }

    /// <summary>The number that it is added to and taken from, where it is an uncertainty of one.</summary>
    public double Around { get; init; }
}

/// <summary>A word of the trade.</summary>
/// <param name="Kind">What it is, and why it was taken.</param>
/// <param name="At">What it stands for.</param>
/// <param name="Word">The word.</param>
/// <param name="Basis">The figure that it rests on, if any.</param>
internal sealed record AssumedWord(AssumptionKind Kind, Target At, Enum Word, Figure? Basis = null) : Assumption(Kind, At, Basis);

/// <summary>A conductor size.</summary>
/// <param name="Kind">What it is, and why it was taken.</param>
/// <param name="At">What it stands for.</param>
/// <param name="Size">The size.</param>
/// <param name="Basis">The figure that it rests on, if any.</param>
internal sealed record AssumedSize(AssumptionKind Kind, Target At, ConductorSize Size, Figure? Basis = null)
    : Assumption(Kind, At, Basis);

/// <summary>Where a run lies.</summary>
/// <param name="Kind">Why it was taken.</param>
/// <param name="At">The run.</param>
/// <param name="Route">The hottest part of its way.</param>
/// <param name="BayMetres">How much of it lies in the engine bay, where it starts there.</param>
internal sealed record AssumedRoute(AssumptionKind Kind, Target At, Route Route, double BayMetres) : Assumption(Kind, At);

/// <summary>What a battery takes for long while it recharges.</summary>
/// <param name="At">The battery.</param>
/// <param name="Amps">The current.</param>
/// <param name="Rate">The most that its makers allow, as a multiple of its capacity.</param>
/// <param name="AmpHours">Its capacity.</param>
internal sealed record AssumedChargingCurrent(Target At, double Amps, Figure Rate, double AmpHours)
    : Assumption(AssumptionKind.ChargingCurrent, At, Rate);

/// <summary>A strap to the body, from a battery or from the engine that the battery is tied to.</summary>
/// <param name="Kind">Which of the two.</param>
/// <param name="Battery">The battery's id.</param>
/// <param name="Index">Its place in the build.</param>
/// <param name="Resistance">The strap's resistance.</param>
internal sealed record AssumedStrap(AssumptionKind Kind, string Battery, int Index, Figure Resistance)
    : Assumption(Kind, new Target(Part.Run), Resistance);

/// <summary>A return run.</summary>
/// <param name="Run">Its id.</param>
/// <param name="Amplifier">The amplifier that it is for.</param>
/// <param name="Length">Its length.</param>
internal sealed record AssumedReturn(string Run, string Amplifier, Figure Length)
    : Assumption(AssumptionKind.ReturnRun, new Target(Part.Run), Length);

/// <summary>How much may be lost on the way to an amplifier and back.</summary>
/// <param name="Target">What is aimed at.</param>
/// <param name="Limit">What may not be exceeded.</param>
internal sealed record AssumedDropLimits(Figure Target, Figure Limit)
    : Assumption(AssumptionKind.DropLimits, Builds.Target.Of(Part.Limits, Member.MaxDrop), Limit);
