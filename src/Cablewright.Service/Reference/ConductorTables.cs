using Cablewright.Contract.Reference;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Reference;
using Cablewright.Engine.Rulesets;
using Cablewright.Service.Answers;
using Cablewright.Service.Documents;

namespace Cablewright.Service.Reference;

/// <summary><c>GET /v1/reference/conductors</c>.</summary>
internal static class ConductorTables
{
    private static readonly JsonAnswer Table = TaggedAnswer.Fixed(Read(), AnswerJson.Shapes.ConductorReference);

    public static Operation Operation => new(
        "readConductors", Tag.Reference, "Read the conductor tables", "Sizes, metals, ampacity, with sources.")
    {
        IsCacheable = true,
    };

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/v1/reference/conductors", Answer).DescribedAs<ConductorReference>(Operation);

    internal static ConductorReference Read() => new()
    {
        Sizes = [.. ConductorSize.All.Select(Size)],
        Materials = [.. MaterialProperties.All.Select(Metal)],
        Ampacity = [.. RulesetLibrary.Newest.Ampacity.Rows.Select(row => new AmpacityEntry
        {
            Size = row.Size,
            InsulationCelsius = row.InsulationCelsius,
            CurrentAmps = row.Amps,
            Source = row.Source,
            Provenance = row.Provenance,
        })],
        Figures = [.. ReferenceTables.Figures.Select(figure => new ReferenceFigure
        {
            Name = figure.Name,
            Value = figure.Value,
            Unit = figure.Unit,
            Meaning = figure.Meaning,
            Source = figure.Source,
            Provenance = figure.Provenance,
        })],
    };

    private static JsonAnswer Answer() => Table;

    private static SizeEntry Size(ConductorSize size)
    {
        (string source, string provenance) = ReferenceTables.SourceOf(size);
        return new SizeEntry
        {
            Size = size.Label,
            NominalAreaMm2 = Significant.Round(size.NominalAreaMm2),
            MetalAreaMm2 = Significant.Round(size.MetalAreaMm2),
            Conductors = [.. MaterialProperties.All.Select(metal => Entry(Conductor.Of(size, metal.Material)))],
            Source = source,
            Provenance = provenance,
        };
    }

    private static ConductorEntry Entry(Conductor conductor) => new()
    {
        Material = conductor.Material,
        ResistanceMilliohmsPerMetre = Significant.Round(conductor.OhmsPerMetreAt20 * 1000),
        MassGramsPerMetre = Significant.Round(conductor.KilogramsPerMetre * 1000),
    };

    private static MaterialEntry Metal(MaterialProperties metal) => new()
    {
        Material = metal.Material,
        ResistivityOhmMm2PerMetre = Significant.Round(metal.ResistivityOhmMm2PerMetre),
        TemperatureCoefficientPerKelvin = metal.TemperatureCoefficientPerKelvin,
        DensityKilogramsPerCubicMetre = metal.DensityKilogramsPerCubicMetre,
        Source = metal.Source,
        Provenance = metal.Provenance,
    };
}
