namespace Cablewright.Engine.Rulesets;

/// <summary>The way back over returns and the vehicle's body.</summary>
internal sealed class ReturnSection(FigureReader figures)
{
    public Figure BodyDrop { get; } = figures.Take("return.body-drop", "V per 12 V nominal");

    /// <summary>Copper of what the starter's current passes on its way back, such as a battery's own strap, at least.</summary>
    public Figure LeastStrap { get; } = figures.Take("return.least-strap", "mm2");

    /// <summary>Insulation rating of a strap that is not stated.</summary>
    public Figure StrapInsulation { get; } = figures.Take("return.strap-insulation", "C");

    /// <summary>What the fuses at a battery let through over the ampacity of its strap.</summary>
    public Figure StrapCarriesFaults { get; } = figures.Take("return.strap-carries-faults", "1");

    public Figure SharedNotBelowSupply { get; } = figures.Take("return.shared-not-below-supply", "1");

    public Figure NotBelowSupply { get; } = figures.Take("return.not-below-supply", "1");
}
