using Cablewright.Contract.Builds;
using Cablewright.Service.Rulesets;
using Cablewright.Service.Validation;
using FluentValidation;

namespace Cablewright.Service.Assessments;

/// <summary>Checks what a build says, apart from its circuit, which the engine checks.</summary>
internal sealed class BuildValidator : ContractValidator<Build>
{
    public BuildValidator() => RuleFor(build => build.Ruleset).Custom(RulesetCheck.Check);

    /// <summary>Whatever holds a build asks <see cref="BuildFaults"/>, which checks its circuit as well.</summary>
    public override bool IsCheckedWhereNested => false;
}
