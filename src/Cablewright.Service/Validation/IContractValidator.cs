using Cablewright.Service.Problems;

namespace Cablewright.Service.Validation;

/// <summary>Checks instances of a contract type.</summary>
internal interface IContractValidator
{
    /// <summary>Whether whatever holds such an instance has it checked along with itself.</summary>
    bool IsCheckedWhereNested { get; }

    /// <summary>Everything wrong with an instance, each fault with its place in it.</summary>
    IReadOnlyList<Fault> FaultsOf(object instance);
}
