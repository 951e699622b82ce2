using Cablewright.Engine.Rulesets;

namespace Cablewright.Engine.Rules;

/// <summary>Limits that no ruleset has, since a build states them itself; findings name them as they name figures.</summary>
internal static class OwnLimits
{
    /// <summary>The drop that a build allows.</summary>
    public static Figure MaxDrop { get; } = Of("limits.maxDrop", "V", "drop from battery to amplifier and back, at most");

    /// <summary>The playing time that a build asks for.</summary>
    public static Figure EngineOffTime { get; } = Of("limits.engineOffTime", "min", "playing time with the engine off, at least");

    /// <summary>The value is each build's own, so it stands in the violation alone.</summary>
    private static Figure Of(string member, string unit, string meaning) =>
        new(member, double.NaN, unit, meaning, "the build's own limit", "read");
}
