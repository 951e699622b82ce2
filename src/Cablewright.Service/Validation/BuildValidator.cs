using Cablewright.Contract.Builds;
using FluentValidation;

namespace Cablewright.Service.Validation;

/// <summary>Checks what a build says, apart from its circuit, which the engine checks.</summary>
internal sealed class BuildValidator : ContractValidator<Build>
{
    public BuildValidator()
    {
        RuleFor(build => build.Ruleset).Custom(RulesetCheck.Check);
        RuleFor(build => build.Vehicle!).SetValidator(new VehicleValidator());
        RuleForEach(build => build.Amplifiers).SetValidator(new AmplifierValidator());
        RuleForEach(build => build.Junctions).SetValidator(new ContractValidator<Junction>());
        RuleForEach(build => build.Runs).SetValidator(new RunValidator());
        RuleFor(build => build.Limits!).SetValidator(new ContractValidator<Limits>());
        RuleFor(build => build.Sizing!).SetValidator(new SizingValidator());
        RuleFor(build => build.Tolerances!).SetValidator(new ContractValidator<Tolerances>());
    }
}
