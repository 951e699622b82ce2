using System.Text.Json.Serialization.Metadata;
using Cablewright.Service.Answers;
using Cablewright.Service.Problems;
using FluentValidation;
using FluentValidation.Results;

namespace Cablewright.Service.Validation;

/// <summary>
/// Checks a contract type: what the attributes of its members state (ranges, lengths, counts, ids, sizes), the rules of a
/// derived class, and whatever stands in it, by the validator of that type.
/// </summary>
/// <typeparam name="T">The contract type.</typeparam>
internal class ContractValidator<T> : AbstractValidator<T>, IContractValidator
{
    private static readonly IList<JsonPropertyInfo> Members = AnswerJson.Shapes.GetTypeInfo(typeof(T))!.Properties;

    private static readonly MemberRule[] Stated = [.. Members.SelectMany(MemberRules.Of)];

    private static readonly NestedMember[] Nested = [.. Members.Select(NestedMember.Of).OfType<NestedMember>()];

    private bool checksNested;

    public ContractValidator() => RuleFor(instance => instance).Custom(CheckStated);

    /// <inheritdoc/>
    public virtual bool IsCheckedWhereNested => true;

    /// <inheritdoc/>
    public void CheckNested()
    {
        if (checksNested) return;
        checksNested = true;
        RuleFor(instance => instance).Custom(CheckNested);
    }

    /// <inheritdoc/>
    public IReadOnlyList<Fault> FaultsOf(object instance) =>
        Validate((T)instance).Errors is { Count: > 0 } errors ? [.. errors.Select(ToFault)] : [];

    private static void CheckStated(T instance, ValidationContext<T> context)
    {
        foreach (MemberRule rule in Stated)
        {
            object? value = rule.ValueIn(instance!);
            if (value is null) continue;
            foreach (Fault fault in rule.Check(value)) context.AddFault(rule.Member, fault);
        }
    }

    private static void CheckNested(T instance, ValidationContext<T> context)
    {
        foreach (NestedMember nested in Nested)
        {
            foreach (Fault fault in nested.FaultsIn(instance!)) context.AddFault(null, fault);
        }
    }

    private static Fault ToFault(ValidationFailure failure) =>
        ((Fault)failure.CustomState).Below(MemberPath.ToPointer(failure.PropertyName));
}
