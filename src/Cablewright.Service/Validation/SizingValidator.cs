using Cablewright.Contract.Builds;

namespace Cablewright.Service.Validation;

/// <summary>Checks what may be chosen from, and its prices.</summary>
internal sealed class SizingValidator : ContractValidator<Sizing>
{
    public SizingValidator() => RuleForEach(sizing => sizing.Prices).SetValidator(new ContractValidator<ConductorPrice>());
}
