using Cablewright.Engine.Completion;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

/// <summary>All that the rules about the supply look at.</summary>
/// <param name="Build">The build.</param>
/// <param name="Balance">Who asks for what.</param>
/// <param name="Cases">Each case that was worked out.</param>
internal sealed record SupplyFacts(CompleteBuild Build, EnergyBalance Balance, IReadOnlyList<SupplyCaseResult> Cases)
{
    /// <summary>What charges can give beyond what the vehicle takes; <c>null</c> where that is not stated.</summary>
    public double? Available => Build.Supply.HotAmps is { } hot ? Math.Max(0, Balance.Available(hot)) : null;

    /// <summary>The case of a name, or <c>null</c> where it was not worked out.</summary>
    public SupplyCaseResult? this[SupplyCaseName name] => Cases.FirstOrDefault(each => each.Name == name);
}
