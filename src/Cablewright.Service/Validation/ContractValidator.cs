using System.Text.Json.Nodes;
using Cablewright.Service.Problems;
using FluentValidation;
using FluentValidation.Results;

namespace Cablewright.Service.Validation;

/// <summary>Checks what the attributes of a contract type state of its members: ranges, lengths, counts, ids, sizes.</summary>
/// <typeparam name="T">The contract type.</typeparam>
internal class ContractValidator<T> : AbstractValidator<T>
{
    private static readonly MemberRule[] Stated = [.. typeof(T).GetProperties().SelectMany(MemberRules.Of)];

    public ContractValidator() => RuleFor(instance => instance).Custom(CheckMembers);

    private static void CheckMembers(T instance, ValidationContext<T> context)
    {
        foreach (MemberRule rule in Stated)
        {
            object? value = rule.Member.GetValue(instance);
            if (value is null) continue;
            foreach (Fault fault in rule.Check(value)) context.AddFault(rule.Member.Name, fault);
        }
    }
}

/// <summary>Puts faults into FluentValidation's results.</summary>
internal static class ValidationFaults
{
    /// <summary>Reports a fault of a member of the object under validation.</summary>
    /// <param name="context">The validation under way.</param>
    /// <param name="member">The member's name, or nothing for the object itself.</param>
    /// <param name="fault">The fault; its pointer starts at the member.</param>
    public static void AddFault<T>(this ValidationContext<T> context, string? member, Fault fault)
    {
        string path = string.Join('.', new[] { context.PropertyPath, member }.Where(part => !string.IsNullOrEmpty(part)));
        context.AddFailure(new ValidationFailure(path, fault.Detail) { ErrorCode = fault.Code, CustomState = fault });
    }

    /// <summary>The same with the parts of the fault.</summary>
    public static void AddFault<T>(
        this ValidationContext<T> context, string? member, string code, string detail, string accepted, JsonNode? value = null) =>
        context.AddFault(member, new Fault("", code, detail, value, accepted));

    /// <summary>Everything that a validator finds wrong, each with its place in the document.</summary>
    public static IReadOnlyList<Fault> FaultsOf<T>(this IValidator<T> validator, T instance) =>
        [.. validator.Validate(instance).Errors.Select(ToFault)];

    private static Fault ToFault(ValidationFailure failure)
    {
        var fault = (Fault)failure.CustomState;
        return fault.Below(MemberPath.ToPointer(failure.PropertyName));
    }
}
