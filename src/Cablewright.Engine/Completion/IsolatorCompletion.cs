using Cablewright.Engine.Builds;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Completion;

/// <summary>Fills in what is not stated of what parts two batteries.</summary>
internal static class IsolatorCompletion
{
    public static CompleteIsolator Complete(
        Isolator isolator, string run, SupplySetting setting, AssumptionList assumptions)
    {
        string at = run + "/isolator";
        double contact = isolator.Kind is not IsolatorKind.Relay ? 0 : assumptions.Take(
            isolator.ContactOhms, at, "/contactResistance", "isolator.contact-resistance",
            "the resistance of the closed contacts is not stated");
        double fall = isolator.Kind is not IsolatorKind.Diode ? 0 : assumptions.Take(
            isolator.ForwardVolts, at, "/forwardVoltage", "isolator.diode-fall", "the diode's forward voltage is not stated");
        if (isolator.Kind is not IsolatorKind.DcDcCharger)
            return new CompleteIsolator(isolator.Kind, isolator.RatedAmps, contact, fall, setting.ChargingVolts - fall, 0);
        double output = assumptions.Take(
            isolator.OutputVolts, at, "/outputVoltage", "isolator.charger-output",
            "the charger's output voltage is not stated", setting.NominalFactor, "V");
        double efficiency = assumptions.Take(
            isolator.Efficiency, at, "/efficiency", "isolator.charger-efficiency", "the charger's efficiency is not stated");
        return new CompleteIsolator(
            isolator.Kind, isolator.RatedAmps, 0, 0, output, output * isolator.RatedAmps!.Value / efficiency);
    }
}
