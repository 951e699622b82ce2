using Cablewright.Engine.Conductors;
using Cablewright.Engine.Results;
using Cablewright.Engine.Sizing;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Materials;

/// <summary>What a job needs of cable, fuses and small parts, like with like.</summary>
internal static class MaterialList
{
    public static IReadOnlyList<MaterialLine> Of(BillOfMaterials needs, ConductorCosts costs) =>
        [
            .. Wire(needs, costs, Side.Supply, "power wire"),
            .. Wire(needs, costs, Side.Return, "ground wire"),
            .. Fuses(needs),
            .. Terminals(needs),
            .. SmallParts(needs),
        ];

    /// <summary>What the lines cost together; <c>null</c> where no price is stated at all.</summary>
    public static MaterialCost? CostOf(IReadOnlyList<MaterialLine> lines, ConductorCosts costs) => costs.ArePriced
        ? new MaterialCost(lines.Sum(line => line.Price ?? 0), costs.Currency, lines.Count(line => line.Price is null))
        : null;

    private static IEnumerable<MaterialLine> Wire(BillOfMaterials needs, ConductorCosts costs, Side side, string item)
    {
        var like = new Dictionary<(ConductorSize Size, Material Material), (int Count, double Metres, double CutMetres)>();
        foreach (WirePiece piece in needs.Pieces)
        {
            if (piece.Run.Side != side) continue;
            ConductorResult conductor = piece.Run.Conductor;
            (int count, double metres, double cut) = like.GetValueOrDefault((conductor.Size, conductor.Material));
            like[(conductor.Size, conductor.Material)] = (
                count + conductor.Count,
                metres + piece.Run.LengthMetres * conductor.Count,
                cut + piece.CutMetres * conductor.Count);
        }

        return like.OrderByDescending(each => each.Key.Size.MetalAreaMm2).ThenBy(each => each.Key.Material)
            .Select(each => new MaterialLine(
                item, each.Key.Size, each.Key.Material, each.Value.Metres, null, null, each.Value.Count)
            {
                CutLengthMetres = each.Value.CutMetres,
                Price = costs.StatedPerMetre(each.Key.Size, each.Key.Material) * each.Value.CutMetres,
                Currency = costs.Currency,
            });
    }

    private static IEnumerable<MaterialLine> Fuses(BillOfMaterials needs)
    {
        var like = new Dictionary<(FuseFamilyName Family, double RatingAmps), int>();
        foreach (WirePiece piece in needs.Pieces)
        {
            Add(piece.Run.Fuse, piece.Run.Conductor.Count);
            Add(piece.Run.FarFuse, piece.Run.Conductor.Count);
        }

        return like.OrderByDescending(each => each.Key.RatingAmps).ThenBy(each => each.Key.Family)
            .Select(each =>
                new MaterialLine("fuse with holder", null, null, null, each.Key.RatingAmps, each.Key.Family, each.Value));

        void Add(FuseResult? fuse, int conductors)
        {
            if (fuse is null) return;
            (FuseFamilyName, double) key = (fuse.Family, fuse.RatingAmps);
            like[key] = like.GetValueOrDefault(key) + (fuse.PerConductor ? conductors : 1);
        }
    }

    /// <summary>The conductor says which barrel; which stud, nobody has said.</summary>
    private static IEnumerable<MaterialLine> Terminals(BillOfMaterials needs)
    {
        var like = new Dictionary<ConductorSize, int>();
        foreach (WirePiece piece in needs.Pieces.Where(piece => piece.RingTerminals > 0))
        {
            ConductorSize size = piece.Run.Conductor.Size;
            like[size] = like.GetValueOrDefault(size) + piece.RingTerminals;
        }

        return like.OrderByDescending(each => each.Key.MetalAreaMm2)
            .Select(each => new MaterialLine("ring terminal", each.Key, null, null, null, null, each.Value));
    }

    private static IEnumerable<MaterialLine> SmallParts(BillOfMaterials needs)
    {
        if (needs.Blocks.Count > 0) yield return Pieces("distribution block", needs.Blocks.Count);
        if (needs.Grommets.Count > 0) yield return Pieces("bulkhead grommet", needs.Grommets.Count);
        if (needs.LoomMetres > 0) yield return new MaterialLine("split loom", null, null, needs.LoomMetres, null, null, 1);
    }

    private static MaterialLine Pieces(string item, int count) => new(item, null, null, null, null, null, count);
}
