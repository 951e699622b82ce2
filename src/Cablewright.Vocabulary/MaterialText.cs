namespace Cablewright.Vocabulary;

/// <summary>What a metal is called in a sentence.</summary>
public static class MaterialText
{
    /// <summary>Such as <c>tinned copper</c>.</summary>
    public static string InText(this Material material) =>
        material is Material.CopperCladAluminium ? "copper-clad aluminium" : material.Word().Replace('-', ' ');
}
