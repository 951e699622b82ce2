namespace Cablewright.Engine.Tests.Published;

/// <summary>Comparisons that say by how much a figure misses.</summary>
internal static class Near
{
    public static void Relative(double expected, double actual, double tolerance, string what)
    {
        double miss = actual / expected - 1;
        Assert.True(
            Math.Abs(miss) <= tolerance,
            $"{what}: expected {expected:R}, engine {actual:R}, {miss:+0.000000%;-0.000000%} (allowed {tolerance:0.######%})");
    }

    public static void Absolute(double expected, double actual, double tolerance, string what) =>
        Assert.True(
            Math.Abs(actual - expected) <= tolerance,
            $"{what}: expected {expected:R}, engine {actual:R} (allowed {tolerance:R})");
}
