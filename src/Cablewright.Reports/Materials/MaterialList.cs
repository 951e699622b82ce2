using Cablewright.Contract.Assessments;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Sizing;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Materials;

/// <summary>What a job needs of cable, fuses and small parts, like with like.</summary>
internal static class MaterialList
{
    public static IReadOnlyList<MaterialLine> Of(BillOfMaterials needs, PriceList prices) =>
        [
            .. Wire(needs, prices, Side.Supply, "power wire"),
            .. Wire(needs, prices, Side.Return, "ground wire"),
            .. Fuses(needs, prices),
            .. Terminals(needs, prices),
            .. AmplifierEnds(needs),
            .. SmallParts(needs, prices),
        ];

    /// <summary>What the lines cost together; <c>null</c> where no price is stated at all.</summary>
    public static MaterialCost? CostOf(IReadOnlyList<MaterialLine> lines, PriceList prices) => prices.IsStated
        ? new MaterialCost
        {
            Price = lines.Sum(line => line.Price ?? 0),
            Currency = prices.Currency,
            UnpricedLines = lines.Count(line => line.Price is null),
        }
        : null;

    private static IEnumerable<MaterialLine> Wire(BillOfMaterials needs, PriceList prices, Side side, string item)
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
                return Priced(price, prices, new MaterialLine
                {
                    ItemName = item,
                    Size = each.Key.Size.Label,
                    Material = each.Key.Material,
                    LengthMetres = each.Value.Metres,
                    CutLengthMetres = each.Value.CutMetres,
                    Count = each.Value.Count,
                });
            });
    }

    private static IEnumerable<MaterialLine> Fuses(BillOfMaterials needs, PriceList prices)
    {
        var like = new Dictionary<(FuseFamilyName Family, double RatingAmps), int>();
        foreach (WirePiece piece in needs.Pieces)
        {
            Add(piece.Run.Near, piece.Run.Choice.Count);
            Add(piece.Run.Far, piece.Run.Choice.Count);
        }

        return like.OrderByDescending(each => each.Key.RatingAmps).ThenBy(each => each.Key.Family)
            .Select(each => Priced(prices.StatedPerFuse(each.Key.Family) * each.Value, prices, new MaterialLine
            {
                ItemName = "fuse with holder",
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
    private static IEnumerable<MaterialLine> Terminals(BillOfMaterials needs, PriceList prices)
    {
        var like = new Dictionary<ConductorSize, int>();
        foreach (WirePiece piece in needs.Pieces.Where(piece => piece.RingTerminals > 0))
        {
            ConductorSize size = piece.Run.Choice.Conductor.Size;
            like[size] = like.GetValueOrDefault(size) + piece.RingTerminals;
        }

        return like.OrderByDescending(each => each.Key.MetalAreaMm2)
            .Select(each => Priced(
                prices.StatedPerTerminal(each.Key) * each.Value, prices,
                new MaterialLine { ItemName = "ring terminal", Size = each.Key.Label, Count = each.Value }));
    }

    /// <summary>What ends in an amplifier's terminal has a ferrule, or a reducer where it is larger than that.</summary>
    private static IEnumerable<MaterialLine> AmplifierEnds(BillOfMaterials needs) => needs.Pieces
        .Where(piece => piece.AmplifierEnds > 0)
        .GroupBy(piece => (piece.Run.Choice.Conductor.Size, piece.ReducedTo))
        .OrderByDescending(like => like.Key.Size.MetalAreaMm2)
        .Select(like => new MaterialLine
        {
            ItemName = like.Key.ReducedTo is null ? "ferrule" : "reducer",
            Size = like.Key.Size.Label,
            ReducedTo = like.Key.ReducedTo?.Label,
            Count = like.Sum(piece => piece.AmplifierEnds),
        });

    private static IEnumerable<MaterialLine> SmallParts(BillOfMaterials needs, PriceList prices)
    {
        foreach (IGrouping<int, BlockNeed> like in needs.Blocks.GroupBy(block => block.Ways).OrderByDescending(like => like.Key))
        {
            yield return Priced(
                prices.PerBlock * like.Count(), prices, Pieces("distribution block", like.Count()) with { Ways = like.Key });
        }

        if (needs.Grommets.Count > 0) yield return Pieces("bulkhead grommet", needs.Grommets.Count);
        if (needs.LoomMetres > 0)
            yield return new MaterialLine { ItemName = "split loom", LengthMetres = needs.LoomMetres, Count = 1 };
        int rings = needs.Pieces.Where(piece => !piece.IsVehicles).Sum(piece => piece.RingTerminals);
        if (rings > 0) yield return Pieces("heat-shrink sleeve", rings);
        yield return Pieces("tie or clamp", needs.Ties);
        yield return Pieces("turn-on lead", 1) with { LengthMetres = needs.SignalMetres };
        yield return Pieces("signal interconnect", needs.Amplifiers) with { LengthMetres = needs.SignalMetres };
    }

    private static MaterialLine Priced(double? price, PriceList prices, MaterialLine line) =>
        line with { Price = price, Currency = price is null ? null : prices.Currency };

    private static MaterialLine Pieces(string item, int count) => new() { ItemName = item, Count = count };
}
