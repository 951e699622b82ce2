using System.Globalization;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>How many cases are tried and from which seed; the environment may say, so that a case can be played again.</summary>
internal static class FuzzRun
{
    public const string SeedVariable = "CABLEWRIGHT_FUZZ_SEED";
    public const string CountVariable = "CABLEWRIGHT_FUZZ_COUNT";

    /// <summary>The number of the first case; with a count of 1, the only one.</summary>
    public const string FirstVariable = "CABLEWRIGHT_FUZZ_FIRST";

    /// <summary>Another one at each run unless the environment sets it.</summary>
    public static int Seed { get; } = Read(SeedVariable) ?? Random.Shared.Next();

    /// <summary>The numbers of the cases to try.</summary>
    /// <param name="usual">How many where the environment does not say.</param>
    public static IEnumerable<int> Cases(int usual) => Enumerable.Range(Read(FirstVariable) ?? 0, Read(CountVariable) ?? usual);

    /// <summary>A part of them, for a test whose cases take longer.</summary>
    /// <param name="usual">How many where the environment does not say.</param>
    /// <param name="part">One in so many.</param>
    public static IEnumerable<int> Some(int usual, int part) =>
        Enumerable.Range(Read(FirstVariable) ?? 0, Read(CountVariable) is { } count ? Math.Max(1, count / part) : usual / part);

    /// <summary>How to try one case alone.</summary>
    public static string Again(int number) =>
        $"{SeedVariable}={Seed} {FirstVariable}={number} {CountVariable}=1";

    private static int? Read(string variable) => Environment.GetEnvironmentVariable(variable) is { Length: > 0 } text
        ? int.Parse(text, CultureInfo.InvariantCulture)
        : null;
}
