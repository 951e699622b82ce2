using Cablewright.Service.Problems;
using FluentValidation;
using FluentValidation.Results;

namespace Cablewright.Service.Validation;

/// <summary>
/// Checks a contract type that has more rules than attributes state. Those come first, then the rules of the derived class, then
/// whatever stands in an instance.
/// </summary>
/// <typeparam name="T">The contract type.</typeparam>
internal abstract class ContractValidator<T> : AbstractValidator<T>, IContractValidator where T : class
{
    private static readonly ContractMembers Members = new(typeof(T));

    private bool hasCheckedNested;

    protected ContractValidator() => AddRule(Members.AddStatedFaults);

    /// <inheritdoc/>
    public virtual bool IsCheckedWhereNested => true;

    /// <inheritdoc/>
    public IReadOnlyList<Fault> FaultsOf(object instance)
    {
        List<Fault> faults = [.. Validate((T)instance).Errors.Select(ToFault)];
        if (!hasCheckedNested) Members.AddNestedFaults(instance, faults);
        return faults;
    }

    /// <summary>Has whatever stands in an instance checked before the rules that follow.</summary>
    protected void CheckNestedFirst()
    {
        hasCheckedNested = true;
        AddRule(Members.AddNestedFaults);
    }

    private void AddRule(Action<object, List<Fault>> addFaults) => RuleFor(instance => instance).Custom((instance, context) =>
    {
        List<Fault> faults = [];
        addFaults(instance, faults);
        foreach (Fault fault in faults) context.AddFault(null, fault);
    });

    private static Fault ToFault(ValidationFailure failure) =>
        ((Fault)failure.CustomState).Below(MemberPath.ToPointer(failure.PropertyName));
}
