using Cablewright.Service.Problems;

namespace Cablewright.Service.Validation;

/// <summary>A validator of a contract type that is only known when the service runs.</summary>
internal interface IContractValidator
{
    /// <summary>Whether whatever holds such an instance has it checked along with itself.</summary>
    bool IsCheckedWhereNested { get; }

    /// <summary>
    /// Has whatever stands in an instance checked after the rules so far. <see cref="Validators"/> calls it last, so that
    /// only a validator with rules that come after what is nested calls it itself, before those.
    /// </summary>
    void CheckNested();

    /// <summary>Everything wrong with an instance, each fault with its place in it.</summary>
    IReadOnlyList<Fault> FaultsOf(object instance);
}
