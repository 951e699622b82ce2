using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Text;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Changes;

/// <summary>One thing to do to a build.</summary>
internal abstract record Step
{
    /// <summary>Let a size be chosen too.</summary>
    internal sealed record OfferSize(ConductorSize Size, ConductorSize LargestNow) : Step;

    /// <summary>Let copper be chosen too.</summary>
    internal sealed record OfferCopper : Step;

    internal sealed record UseConductor(string Run, ConductorChoice Choice, ConductorChoice Now) : Step;

    internal sealed record UseMaterial(string Run, Material Material, Material Now) : Step;

    internal sealed record UseCopperEverywhere : Step;

    internal sealed record LayInParallel(string Run, int Count, int Now) : Step;

    /// <summary>Cable of a higher insulation rating.</summary>
    internal sealed record UseInsulation(string Run, double Celsius, double NowCelsius) : Step;

    /// <summary>Another fuse, or one where there is none.</summary>
    internal sealed record FitFuse(string Run, string Place, FittedFuse Fuse, bool ForEachConductor, double? NowAmps) : Step;

    internal sealed record MoveFuse(string Run, WrittenFigure Within) : Step;

    internal sealed record UseIsolator(string Run, WrittenFigure Rating, WrittenFigure Now) : Step;

    internal sealed record UseBattery(string Battery, WrittenFigure Capacity, double NowAmpHours) : Step;

    internal sealed record Shorten(string Run, WrittenFigure Length, WrittenFigure Now) : Step;

    internal sealed record ShortenAll(int Percent) : Step;

    internal sealed record LimitAmplifier(string Amplifier, PowerFigure Of, WrittenFigure To, WrittenFigure Now) : Step;

    internal sealed record LimitAll(int Percent) : Step;
}

/// <summary>The figure by which an amplifier's power is stated.</summary>
internal enum PowerFigure
{
    InputCurrent,
    Output,
    OwnFuses,
}
