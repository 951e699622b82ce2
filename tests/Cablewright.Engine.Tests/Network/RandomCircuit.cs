using Cablewright.Engine.Network;

namespace Cablewright.Engine.Tests.Network;

public enum CircuitShape
{
    Tree,
    SharedReturn,
    TwoBatteries,
    Loops,
    LoopsAndTwoBatteries,
}

/// <summary>Vehicle-like circuits from a number: the same number always gives the same circuit.</summary>
internal sealed class RandomCircuit
{
    private const int Ground = 0, Battery = 1, Body = 2;

    private readonly Random random;
    private readonly CircuitShape shape;
    private readonly bool heavy;
    private readonly List<Branch> branches = [];
    private readonly List<double> ohms = [];
    private readonly List<int> supplyNodes = [Battery];
    private readonly List<LoadPort> loads = [];
    private readonly List<LoadDraw> draws = [];
    private readonly List<SourcePort> sources = [];
    private readonly List<SourceState> states = [];
    private int nodes = 3;

    private RandomCircuit(CircuitShape shape, int number)
    {
        this.shape = shape;
        random = new Random(1_000_003 * (int)shape + number);
        heavy = random.Next(2) == 0;
    }

    public static Circuit Make(CircuitShape shape, int number) => new RandomCircuit(shape, number).Make();

    private Circuit Make()
    {
        double volts = heavy ? Between(26, 29) : Between(13, 14.8);
        Join(Body, Ground, Between(0.2e-3, 2e-3));
        int junctions = random.Next(0, 5);
        for (int i = 0; i < junctions; i++) supplyNodes.Add(Branch(AnySupply(), Between(0.3e-3, 8e-3)));
        int sharedReturn = shape is CircuitShape.SharedReturn ? nodes++ : Body;
        if (sharedReturn != Body) Join(sharedReturn, random.Next(2) == 0 ? Ground : Body, Between(0.3e-3, 4e-3));
        int amplifiers = random.Next(1, 8);
        for (int i = 0; i < amplifiers; i++) AddAmplifier(sharedReturn, first: i == 0);
        if (shape is CircuitShape.TwoBatteries or CircuitShape.LoopsAndTwoBatteries) AddSecondBattery(volts);
        if (shape is CircuitShape.Loops or CircuitShape.LoopsAndTwoBatteries) AddLoops();
        return new Circuit(
            new ElectricalNetwork(nodes, branches, sources, loads, [Ground, Battery]), [.. ohms], [.. states], [.. draws],
            [0, volts]);
    }

    private void AddAmplifier(int returnNode, bool first)
    {
        int positive = Branch(AnySupply(), Between(0.5e-3, 10e-3));
        int negative = Branch(returnNode, Between(0.3e-3, 5e-3));
        loads.Add(new LoadPort(positive, negative));
        double scale = heavy ? 2 : 1;
        draws.Add(first ? new LoadDraw(LoadKind.ConstantPower, Between(200, 3000)) : random.Next(10) switch
        {
            < 6 => new LoadDraw(LoadKind.ConstantPower, Between(50, 3000)),
            < 8 => new LoadDraw(LoadKind.ConstantCurrent, Between(5, 150)),
            _ => new LoadDraw(LoadKind.ConstantResistance, scale * Between(0.1, 3)),
        });
    }

    private void AddSecondBattery(double volts)
    {
        int positive = Branch(AnySupply(), Between(0.3e-3, 3e-3));
        supplyNodes.Add(positive);
        int negative = Branch(Body, Between(0.2e-3, 1e-3));
        sources.Add(new SourcePort(positive, negative));
        states.Add(new SourceState(volts - Between(0.2, 1.8), Between(3e-3, 30e-3)));
    }

    private void AddLoops()
    {
        int count = random.Next(1, 4);
        for (int i = 0; i < count; i++)
        {
            Branch parallel = branches[random.Next(branches.Count)];
            int from = AnySupply(), to = loads[random.Next(loads.Count)].Positive;
            Join(i == 0 ? parallel.From : from, i == 0 ? parallel.To : to, Between(0.5e-3, 10e-3));
        }
    }

    private int Branch(int from, double resistance)
    {
        Join(from, nodes, resistance);
        return nodes++;
    }

    private void Join(int from, int to, double resistance)
    {
        branches.Add(new Branch(from, to));
        ohms.Add(resistance);
    }

    private int AnySupply() => supplyNodes[random.Next(supplyNodes.Count)];

    private double Between(double low, double high) => low + (high - low) * random.NextDouble();
}
