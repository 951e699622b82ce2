using Cablewright.Vocabulary;

namespace Cablewright.Service.Comparisons;

/// <summary>What can be wrong with a comparison, besides its builds.</summary>
internal static class ComparisonCodes
{
    [Meaning("An include in a build of a comparison, which has no place to answer it.")]
    public const string Include = "comparison.include";
}
