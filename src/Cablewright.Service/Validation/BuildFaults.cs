using Cablewright.Contract.Builds;
using Cablewright.Engine;
using Cablewright.Service.Problems;
using FluentValidation.Results;

namespace Cablewright.Service.Validation;

/// <summary>Every fault of a build's content: the one place where validators are called.</summary>
internal static class BuildFaults
{
    private static readonly BuildValidator Validator = new();

    /// <summary>What is wrong with what the build says, then what is wrong with its circuit, all at once.</summary>
    /// <param name="stated">The build as sent.</param>
    /// <param name="mapped">The same for the engine, with placeholders where a value cannot be read.</param>
    public static IReadOnlyList<Fault> Of(Build stated, Engine.Builds.Build mapped)
    {
        ValidationResult content = Validator.Validate(stated);
        return
        [
            .. content.Errors.Select(ValidationFaults.ToFault),
            .. Assessor.FindFaults(mapped).Select(
                fault => new Fault(fault.Pointer, fault.Code, fault.Detail, null, fault.Accepted)),
        ];
    }
}
