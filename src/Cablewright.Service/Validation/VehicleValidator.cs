using Cablewright.Contract.Builds;

namespace Cablewright.Service.Validation;

/// <summary>Checks the vehicle's supply.</summary>
internal sealed class VehicleValidator : ContractValidator<Vehicle>
{
    public VehicleValidator()
    {
        RuleFor(vehicle => vehicle.Alternator!).SetValidator(new ContractValidator<Alternator>());
        RuleForEach(vehicle => vehicle.Batteries).SetValidator(new ContractValidator<Battery>());
        RuleFor(vehicle => vehicle.Body!).SetValidator(new ContractValidator<Body>());
    }
}
