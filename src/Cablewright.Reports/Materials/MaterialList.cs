using Cablewright.Contract.Assessments;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Fuses;
using Cablewright.Engine.Materials;
using Cablewright.Engine.Sizing;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Materials;

/// <summary>What a job needs of cable, fuses and small parts, like with like.</summary>
internal static class MaterialList
{
    public static IReadOnlyList<MaterialLine> Of(BillOfMaterials needs, ConductorCosts costs, Speech speech)
    {
        return
        [
            .. Wire(needs, costs, Side.Supply, Name(KitPartKind.PowerWire)),
            .. Wire(needs, costs, Side.Return, Name(KitPartKind.GroundWire)),
            .. Fuses(needs, Name(KitPartKind.Fuse)),
            .. Terminals(needs, Name(KitPartKind.RingTerminal)),
            .. SmallParts(needs, Name),
        ];

        string Name(KitPartKind kind) => speech.Text("part." + Keys.Of(kind), []);
    }

    /// <summary>What the lines cost together; <c>null</c> where no price is stated at all.</summary>
    public static MaterialCost? CostOf(IReadOnlyList<MaterialLine> lines, ConductorCosts costs) => costs.ArePriced
        ? new MaterialCost
        {
            Price = lines.Sum(line => line.Price ?? 0),
            Currency = costs.Currency,
            UnpricedLines = lines.Count(line => line.Price is null),
        }
        : null;

    private static IEnumerable<MaterialLine> Wire(BillOfMaterials needs, ConductorCosts costs, Side side, string item)
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
                double? price = costs.StatedPerMetre(each.Key.Size, each.Key.Material) * each.Value.CutMetres;
                return new MaterialLine
                {
                    ItemName = item,
                    Size = each.Key.Size.Label,
                    Material = each.Key.Material,
                    LengthMetres = each.Value.Metres,
                    CutLengthMetres = each.Value.CutMetres,
                    Count = each.Value.Count,
                    Price = price,
                    Currency = price is null ? null : costs.Currency,
                };
            });
    }

    private static IEnumerable<MaterialLine> Fuses(BillOfMaterials needs, string item)
    {
        var like = new Dictionary<(FuseFamilyName Family, double RatingAmps), int>();
        foreach (WirePiece piece in needs.Pieces)
        {
            Add(piece.Run.Near, piece.Run.Choice.Count);
            Add(piece.Run.Far, piece.Run.Choice.Count);
        }

        return like.OrderByDescending(each => each.Key.RatingAmps).ThenBy(each => each.Key.Family)
            .Select(each => new MaterialLine
            {
                ItemName = item,
                RatingAmps = each.Key.RatingAmps,
                Family = each.Key.Family,
                Count = each.Value,
            });

        void Add(FittedFuse? fuse, int conductors)
        {
            if (fuse is null) return;
            (FuseFamilyName, double) key = (fuse.Family.Name, fuse.RatingAmps);
            like[key] = like.GetValueOrDefault(key) + (fuse.PerConductor ? conductors : 1);
        }
    }

    /// <summary>The conductor says which barrel; which stud, nobody has said.</summary>
    private static IEnumerable<MaterialLine> Terminals(BillOfMaterials needs, string item)
    {
        var like = new Dictionary<ConductorSize, int>();
        foreach (WirePiece piece in needs.Pieces.Where(piece => piece.RingTerminals > 0))
        {
            ConductorSize size = piece.Run.Choice.Conductor.Size;
            like[size] = like.GetValueOrDefault(size) + piece.RingTerminals;
        }

        return like.OrderByDescending(each => each.Key.MetalAreaMm2)
            .Select(each => new MaterialLine { ItemName = item, Size = each.Key.Label, Count = each.Value });
    }

    private static IEnumerable<MaterialLine> SmallParts(BillOfMaterials needs, Func<KitPartKind, string> name)
    {
        if (needs.Blocks.Count > 0) yield return Pieces(name(KitPartKind.DistributionBlock), needs.Blocks.Count);
        if (needs.Grommets.Count > 0) yield return Pieces(name(KitPartKind.Grommet), needs.Grommets.Count);
        if (needs.LoomMetres > 0)
            yield return new MaterialLine { ItemName = name(KitPartKind.Loom), LengthMetres = needs.LoomMetres, Count = 1 };
    }

    private static MaterialLine Pieces(string item, int count) => new() { ItemName = item, Count = count };
}
