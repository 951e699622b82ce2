namespace Cablewright.Engine.Conductors;

/// <summary>The metal of a conductor.</summary>
public enum Material
{
    /// <summary>Annealed bare copper.</summary>
    Copper,

    /// <summary>Annealed copper, each strand coated with tin.</summary>
    TinnedCopper,

    /// <summary>Aluminium strands with a skin of copper, one tenth of the area.</summary>
    CopperCladAluminium,

    /// <summary>Aluminium.</summary>
    Aluminium,
}
