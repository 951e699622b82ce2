using Cablewright.Engine.Builds;
using Cablewright.Engine.Completing;
using Cablewright.Engine.Sizing;

namespace Cablewright.Engine.Answers;

/// <summary>What a job needs of wire and fuses, like with like.</summary>
internal static class MaterialList
{
    public static IReadOnlyList<MaterialLine> Of(CompleteBuild build, Decision decision) =>
        [
            .. Wire(build, decision, Side.Supply, "power wire"),
            .. Wire(build, decision, Side.Return, "ground wire"),
            .. Fuses(decision),
        ];

    private static IEnumerable<MaterialLine> Wire(CompleteBuild build, Decision decision, Side side, string item) =>
        from run in Enumerable.Range(0, build.Runs.Count)
        where build.Runs[run].Side == side
        let choice = decision.Conductors[run]
        group (Pieces: choice.Count, Metres: build.Runs[run].LengthMetres * choice.Count) by choice.Conductor into like
        orderby like.Key.Size.MetalAreaMm2 descending, like.Key.Material
        select new MaterialLine(
            item, like.Key.Size, like.Key.Material, like.Sum(piece => piece.Metres), null, null, like.Sum(piece => piece.Pieces));

    private static IEnumerable<MaterialLine> Fuses(Decision decision) =>
        from run in Enumerable.Range(0, decision.Conductors.Length)
        from fuse in new[] { decision.Near[run], decision.Far[run] }
        where fuse is not null
        group fuse.PerConductor ? decision.Conductors[run].Count : 1 by (fuse.Family.Name, fuse.RatingAmps) into like
        orderby like.Key.RatingAmps descending, like.Key.Name
        select new MaterialLine("fuse with holder", null, null, null, like.Key.RatingAmps, like.Key.Name, like.Sum());
}
