namespace Cablewright.Engine.Network;

/// <summary>A resistance between two nodes.</summary>
/// <param name="From">Node where positive current enters.</param>
/// <param name="To">Node where it leaves.</param>
/// <param name="FallVolts">A fall that is there at any current, as a conducting diode's; 0 in a plain resistance.</param>
public readonly record struct Branch(int From, int To, double FallVolts = 0);

/// <summary>A voltage behind a resistance, such as a battery.</summary>
/// <param name="Positive">Node of its positive terminal.</param>
/// <param name="Negative">Node of its negative terminal.</param>
public readonly record struct SourcePort(int Positive, int Negative);

/// <summary>Where a load is connected.</summary>
/// <param name="Positive">Node of its positive terminal.</param>
/// <param name="Negative">Node of its negative terminal.</param>
public readonly record struct LoadPort(int Positive, int Negative);

/// <summary>How a load's current answers to its voltage.</summary>
public enum LoadKind
{
    /// <summary>I = P / V: a converter that holds its output.</summary>
    ConstantPower,

    /// <summary>I is the same at any voltage.</summary>
    ConstantCurrent,

    /// <summary>I = V / R: the output falls with the square of the voltage.</summary>
    ConstantResistance,
}

/// <summary>What a load draws.</summary>
/// <param name="Kind">How its current answers to its voltage.</param>
/// <param name="Magnitude">Watts, amperes or ohms by kind; not negative, but for a constant current that is put in, as an
/// alternator does. A constant-resistance load is more than 0.</param>
public readonly record struct LoadDraw(LoadKind Kind, double Magnitude)
{
    /// <summary>Whether it feeds the circuit rather than drawing from it.</summary>
    public bool PutsIn => Kind is LoadKind.ConstantCurrent && Magnitude < 0;
}

/// <summary>What a source gives.</summary>
/// <param name="Volts">Voltage behind its resistance.</param>
/// <param name="Ohms">Its resistance, more than 0; infinite: not connected.</param>
public readonly record struct SourceState(double Volts, double Ohms);

/// <summary>
/// Which nodes are joined by what: the shape of a circuit, without its values. Nodes are numbered from 0. Every node reaches a
/// fixed-potential node over branches, so that the node equations have one solution when nothing is drawn.
/// </summary>
/// <param name="NodeCount">How many nodes there are.</param>
/// <param name="Branches">The resistances.</param>
/// <param name="Sources">The voltages behind a resistance.</param>
/// <param name="Loads">The loads.</param>
/// <param name="FixedPotentialNodes">Nodes whose potential is given: at least one.</param>
public sealed record ElectricalNetwork(
    int NodeCount,
    IReadOnlyList<Branch> Branches,
    IReadOnlyList<SourcePort> Sources,
    IReadOnlyList<LoadPort> Loads,
    IReadOnlyList<int> FixedPotentialNodes);
