namespace Cablewright.Engine.Rulesets;

/// <summary>What is bought above what is measured.</summary>
internal sealed class MaterialsSection(FigureReader figures)
{
    public Figure CutAllowance { get; } = figures.Take("materials.cut-allowance", "1");

    public Figure TieSpacing { get; } = figures.Take("materials.tie-spacing", "m");

    public Figure LoomLength { get; } = figures.Take("materials.loom-length", "m");
}
