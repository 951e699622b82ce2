namespace Cablewright.Engine.Builds;

/// <summary>How large builds may be; what is usual serves any vehicle.</summary>
public static class BuildSizes
{
    /// <summary>Amplifiers of a build that counts as usual, at most.</summary>
    public const int UsualAmplifiers = 16;

    /// <summary>Runs of a build that counts as usual, at most.</summary>
    public const int UsualRuns = 96;

    /// <summary>Batteries of a build that counts as usual, at most.</summary>
    public const int UsualBatteries = 8;
}
