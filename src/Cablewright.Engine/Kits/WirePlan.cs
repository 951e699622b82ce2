using Cablewright.Engine.Materials;
using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Kits;

/// <summary>Which of a kit's cables is used for which run of one side.</summary>
/// <remarks>
/// The runs take their turn by current, the greatest first; each takes the best conductor of which a piece is long enough. A
/// cable cannot be joined, so a run needs one piece.
/// </remarks>
internal sealed class WirePlan
{
    private readonly Dictionary<string, KitWire> byRun = new(StringComparer.Ordinal);
    private readonly List<WireShortage> shortages = [];

    public WirePlan(IReadOnlyList<WirePiece> pieces, IReadOnlyList<KitWire> wires)
    {
        if (wires.Count == 0) return;
        List<Stock> stock = [.. wires.SelectMany(
            wire => Enumerable.Range(0, wire.Part.Count).Select(_ => new Stock(wire, wire.Part.LengthMetres!.Value)))];
        foreach (WirePiece piece in pieces.OrderByDescending(piece => piece.Run.PeakAmps))
        {
            for (int conductor = 0; conductor < piece.Run.Choice.Count; conductor++) Take(piece, stock);
        }
    }

    /// <summary>The cable of each run.</summary>
    public IReadOnlyDictionary<string, KitWire> ByRun => byRun;

    /// <summary>Where a piece is too short, or long enough only without the allowance.</summary>
    public IReadOnlyList<WireShortage> Shortages => shortages;

    private void Take(WirePiece piece, List<Stock> stock)
    {
        double bare = piece.Run.Run.LengthMetres;
        Stock taken = stock.Find(left => left.Reaches(piece.CutMetres))
            ?? stock.Find(left => left.Reaches(bare))
            ?? stock.MaxBy(left => left.Metres)!;
        byRun.TryAdd(piece.Run.Id, taken.Wire);
        if (!taken.Reaches(piece.CutMetres))
            shortages.Add(new WireShortage(piece, taken.Wire, Math.Max(taken.Metres, 0), IsHard: !taken.Reaches(bare)));
        taken.Metres -= piece.CutMetres;
    }

    private sealed class Stock(KitWire wire, double metres)
    {
        public KitWire Wire { get; } = wire;

        public double Metres { get; set; } = metres;

        public bool Reaches(double wanted) => !Significant.Exceeds(wanted, Metres);
    }
}

/// <summary>A run for which a kit's cable is too short.</summary>
/// <param name="Piece">What the run needs.</param>
/// <param name="Wire">The cable.</param>
/// <param name="LeftMetres">What is left of it.</param>
/// <param name="IsHard">Whether it does not even reach.</param>
internal sealed record WireShortage(WirePiece Piece, KitWire Wire, double LeftMetres, bool IsHard);
