using Cablewright.Contract;
using Cablewright.Contract.Builds;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Assessments;

/// <summary>
/// How large a build may be whose sender shows no key: as large as a car's, so that strangers cannot ask for more work.
/// </summary>
internal static class KeylessLimits
{
    /// <summary>The lists that are too long for a caller without a key, and not for one with a key.</summary>
    public static IEnumerable<Fault> FaultsOf(Build build) =>
    [
        .. Check("/amplifiers", build.Amplifiers.Count, ContractLimits.AmplifiersWithoutKey, ContractLimits.Amplifiers),
        .. Check("/runs", build.Runs.Count, ContractLimits.RunsWithoutKey, ContractLimits.Runs),
        .. Check(
            "/vehicle/batteries", build.Vehicle?.Batteries?.Count ?? 0, ContractLimits.BatteriesWithoutKey,
            ContractLimits.Batteries),
    ];

    private static IEnumerable<Fault> Check(string pointer, int count, int withoutKey, int withKey)
    {
        if (count > withoutKey && count <= withKey)
            yield return new Fault(
                pointer,
                BuildCodes.TooManyWithoutKey,
                $"{count} are too many without a shop's key; the limit is {withoutKey}",
                null,
                $"at most {withoutKey}; with a shop's key at most {withKey}");
    }
}
