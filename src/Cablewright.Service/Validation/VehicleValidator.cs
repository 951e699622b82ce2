using Cablewright.Contract.Builds;

namespace Cablewright.Service.Validation;

/// <summary>Checks the vehicle's supply.</summary>
internal sealed class VehicleValidator : ContractValidator<Vehicle>
{
    public VehicleValidator()
    {
        RuleFor(vehicle => vehicle.Alternator!).SetValidator(new AlternatorValidator());
        RuleFor(vehicle => vehicle.Converter!).SetValidator(new ConverterValidator());
        RuleForEach(vehicle => vehicle.Batteries).SetValidator(new BatteryValidator());
        RuleForEach(vehicle => vehicle.Capacitors).SetValidator(new ContractValidator<Capacitor>());
        RuleFor(vehicle => vehicle.Body!).SetValidator(new ContractValidator<Body>());
    }
}
