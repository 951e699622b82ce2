using Cablewright.Contract.Assessments;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Sizing;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Materials;

/// <summary>What a job needs of cable, fuses and small parts, like with like.</summary>
internal sealed class MaterialList
{
    private readonly BillOfMaterials needs;
    private readonly PriceList prices;
    private readonly Speech speech;

    private MaterialList(BillOfMaterials needs, PriceList prices, Speech speech)
    {
        this.needs = needs;
        this.prices = prices;
        this.speech = speech;
    }

    /// <summary>The lines, cable first.</summary>
    public static IReadOnlyList<MaterialLine> Of(BillOfMaterials needs, PriceList prices, Speech speech)
    {
        var list = new MaterialList(needs, prices, speech);
        return
        [
            .. list.Wire(Side.Supply, KitPartKind.PowerWire),
            .. list.Wire(Side.Return, KitPartKind.GroundWire),
            .. list.Fuses(),
            .. list.Terminals(),
            .. list.AmplifierEnds(),
            .. list.SmallParts(),
        ];
    }

    /// <summary>What the lines cost together; <c>null</c> where no price is stated at all.</summary>
    public static MaterialCost? CostOf(IReadOnlyList<MaterialLine> lines, PriceList prices) => prices.IsStated
        ? new MaterialCost
        {
            Price = lines.Sum(line => line.Price ?? 0),
            Currency = prices.Currency,
            UnpricedLines = lines.Count(line => line.Price is null),
        }
        : null;

    private IEnumerable<MaterialLine> Wire(Side side, KitPartKind item)
    {
        var like = new Dictionary<(ConductorSize Size, Material Material), (int Count, double Metres, double CutMetres)>();
        foreach (WirePiece piece in needs.Pieces)
        {
            if (piece.Run.Run.Side != side) continue;
            (Conductor conductor, int laid) = (piece.Run.Choice.Conductor, piece.Run.Choice.Count);
            (int count, double metres, double cut) = like.GetValueOrDefault((conductor.Size, conductor.Material));
            like[(conductor.Size, conductor.Material)] =
                (count + laid, metres + piece.Run.Run.LengthMetres * laid, cut + piece.CutMetres * laid);
        }

        return like.OrderByDescending(each => each.Key.Size.MetalAreaMm2).ThenBy(each => each.Key.Material)
            .Select(each =>
            {
                double? price = prices.StatedPerMetre(each.Key.Size, each.Key.Material) * each.Value.CutMetres;
                return Priced(price, new MaterialLine
                {
                    ItemName = Name(item),
                    Size = each.Key.Size.Label,
                    Material = each.Key.Material,
                    LengthMetres = each.Value.Metres,
                    CutLengthMetres = each.Value.CutMetres,
                    Count = each.Value.Count,
                });
            });
    }

    private IEnumerable<MaterialLine> Fuses()
    {
        var like = new Dictionary<(FuseFamilyName Family, double RatingAmps), int>();
        foreach (WirePiece piece in needs.Pieces)
        {
            Add(piece.Run.Near, piece.Run.Choice.Count);
            Add(piece.Run.Far, piece.Run.Choice.Count);
        }

        return like.OrderByDescending(each => each.Key.RatingAmps).ThenBy(each => each.Key.Family)
            .Select(each => Priced(prices.StatedPerFuse(each.Key.Family) * each.Value, new MaterialLine
            {
                ItemName = Name(KitPartKind.Fuse),
                RatingAmps = each.Key.RatingAmps,
                Family = each.Key.Family,
                Count = each.Value,
            }));

        void Add(FittedFuse? fuse, int conductors)
        {
            if (fuse is null) return;
            (FuseFamilyName, double) key = (fuse.Family.Name, fuse.RatingAmps);
            like[key] = like.GetValueOrDefault(key) + (fuse.PerConductor ? conductors : 1);
        }
    }

    /// <summary>The conductor says which barrel; which stud, nobody has said.</summary>
    private IEnumerable<MaterialLine> Terminals()
    {
        var like = new Dictionary<ConductorSize, int>();
        foreach (WirePiece piece in needs.Pieces.Where(piece => piece.RingTerminals > 0))
        {
            ConductorSize size = piece.Run.Choice.Conductor.Size;
            like[size] = like.GetValueOrDefault(size) + piece.RingTerminals;
        }

        return like.OrderByDescending(each => each.Key.MetalAreaMm2)
            .Select(each => Priced(
                prices.StatedPerTerminal(each.Key) * each.Value,
                new MaterialLine { ItemName = Name(KitPartKind.RingTerminal), Size = each.Key.Label, Count = each.Value }));
    }

    /// <summary>What ends in an amplifier's terminal has a ferrule, or a reducer where it is larger than that.</summary>
    private IEnumerable<MaterialLine> AmplifierEnds() => needs.Pieces
        .Where(piece => piece.AmplifierEnds > 0)
        .GroupBy(piece => (piece.Run.Choice.Conductor.Size, piece.ReducedTo))
        .OrderByDescending(like => like.Key.Size.MetalAreaMm2)
        .Select(like => new MaterialLine
        {
            ItemName = speech.Text(like.Key.ReducedTo is null ? "part.ferrule" : "part.reducer", []),
            Size = like.Key.Size.Label,
            ReducedTo = like.Key.ReducedTo?.Label,
            Count = like.Sum(piece => piece.AmplifierEnds),
        });

    private IEnumerable<MaterialLine> SmallParts()
    {
        foreach (IGrouping<int, BlockNeed> like in needs.Blocks.GroupBy(block => block.Ways).OrderByDescending(like => like.Key))
        {
            yield return Priced(
                prices.PerBlock * like.Count(), Pieces(KitPartKind.DistributionBlock, like.Count()) with { Ways = like.Key });
        }

        if (needs.Grommets.Count > 0) yield return Pieces(KitPartKind.Grommet, needs.Grommets.Count);
        if (needs.LoomMetres > 0) yield return Pieces(KitPartKind.Loom, 1) with { LengthMetres = needs.LoomMetres };
        if (needs.RingTerminals > 0) yield return Pieces(KitPartKind.HeatShrink, needs.RingTerminals);
        if (needs.Ties > 0) yield return Pieces(KitPartKind.Ties, needs.Ties);
        yield return Pieces(KitPartKind.TurnOnLead, 1) with { LengthMetres = needs.SignalMetres };
        yield return Pieces(KitPartKind.SignalInterconnect, needs.Amplifiers) with { LengthMetres = needs.SignalMetres };
    }

    private MaterialLine Priced(double? price, MaterialLine line) =>
        line with { Price = price, Currency = price is null ? null : prices.Currency };

    private MaterialLine Pieces(KitPartKind kind, int count) => new() { ItemName = Name(kind), Count = count };

    private string Name(KitPartKind kind) => speech.Text("part." + Keys.Of(kind), []);
}
