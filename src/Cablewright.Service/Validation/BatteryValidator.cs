using Cablewright.Contract.Builds;

namespace Cablewright.Service.Validation;

/// <summary>Checks one battery.</summary>
internal sealed class BatteryValidator : ContractValidator<Battery>
{
    public BatteryValidator() =>
        RuleForEach(battery => battery.Polarisation).SetValidator(new ContractValidator<Polarisation>());
}
