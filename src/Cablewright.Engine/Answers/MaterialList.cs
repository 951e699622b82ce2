using Cablewright.Engine.Builds;
using Cablewright.Engine.Kits;

namespace Cablewright.Engine.Answers;

/// <summary>What a job needs of cable, fuses and small parts, like with like.</summary>
internal static class MaterialList
{
    public static IReadOnlyList<MaterialLine> Of(JobNeeds needs) =>
        [
            .. Wire(needs, Side.Supply, "power wire"),
            .. Wire(needs, Side.Return, "ground wire"),
            .. Fuses(needs),
            .. Terminals(needs),
            .. SmallParts(needs),
        ];

    private static IEnumerable<MaterialLine> Wire(JobNeeds needs, Side side, string item) =>
        from piece in needs.Pieces
        where piece.Run.Side == side
        group piece by (piece.Run.Conductor.Size, piece.Run.Conductor.Material) into like
        orderby like.Key.Size.MetalAreaMm2 descending, like.Key.Material
        select new MaterialLine(
            item, like.Key.Size, like.Key.Material, like.Sum(piece => piece.Run.LengthMetres * piece.Run.Conductor.Count),
            null, null, like.Sum(piece => piece.Run.Conductor.Count))
        {
            CutLengthMetres = like.Sum(piece => piece.CutMetres * piece.Run.Conductor.Count),
        };

    private static IEnumerable<MaterialLine> Fuses(JobNeeds needs) =>
        from piece in needs.Pieces
        from fuse in new[] { piece.Run.Fuse, piece.Run.FarFuse }
        where fuse is not null
        group fuse.PerConductor ? piece.Run.Conductor.Count : 1 by (fuse.Family, fuse.RatingAmps) into like
        orderby like.Key.RatingAmps descending, like.Key.Family
        select new MaterialLine("fuse with holder", null, null, null, like.Key.RatingAmps, like.Key.Family, like.Sum());

    /// <summary>The conductor says which barrel; which stud, nobody has said.</summary>
    private static IEnumerable<MaterialLine> Terminals(JobNeeds needs) =>
        from piece in needs.Pieces
        where piece.RingTerminals > 0
        group piece.RingTerminals by piece.Run.Conductor.Size into like
        orderby like.Key.MetalAreaMm2 descending
        select new MaterialLine("ring terminal", like.Key, null, null, null, null, like.Sum());

    private static IEnumerable<MaterialLine> SmallParts(JobNeeds needs)
    {
        if (needs.Blocks.Count > 0) yield return Pieces("distribution block", needs.Blocks.Count);
        if (needs.Grommets.Count > 0) yield return Pieces("bulkhead grommet", needs.Grommets.Count);
        if (needs.LoomMetres > 0) yield return new MaterialLine("split loom", null, null, needs.LoomMetres, null, null, 1);
    }

    private static MaterialLine Pieces(string item, int count) => new(item, null, null, null, null, null, count);
}
