using System.Text.Json.Nodes;
using Cablewright.Service.Problems;
using FluentValidation;
using FluentValidation.Results;

namespace Cablewright.Service.Validation;

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
}
