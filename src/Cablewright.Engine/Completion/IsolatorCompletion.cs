using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Completion;

/// <summary>Fills in what is not stated of what parts two batteries.</summary>
internal static class IsolatorCompletion
{
    public static CompleteIsolator Complete(
        Isolator isolator, string run, SupplySetting setting, AssumptionList assumptions)
    {
        string at = run + "/isolator";
        IsolatorSection usual = assumptions.Ruleset.Isolator;
        double contact = isolator.Kind is not IsolatorKind.Relay ? 0 : assumptions.Take(
            isolator.ContactOhms, at, "/contactResistance", usual.ContactResistance,
            "the resistance of the closed contacts is not stated");
        double fall = isolator.Kind is not IsolatorKind.Diode ? 0 : assumptions.Take(
            isolator.ForwardVolts, at, "/forwardVoltage", usual.DiodeFall, "the diode's forward voltage is not stated");
        if (isolator.Kind is not IsolatorKind.DcDcCharger)
            return new CompleteIsolator(isolator.Kind, isolator.RatedAmps, contact, fall, setting.ChargingVolts - fall, 0);
        double output = assumptions.Take(
            isolator.OutputVolts, at, "/outputVoltage", usual.ChargerOutput,
            "the charger's output voltage is not stated", setting.NominalFactor, "V");
        double efficiency = assumptions.Take(
            isolator.Efficiency, at, "/efficiency", usual.ChargerEfficiency, "the charger's efficiency is not stated");
        return new CompleteIsolator(
            isolator.Kind, isolator.RatedAmps, 0, 0, output, output * isolator.RatedAmps!.Value / efficiency);
    }
}
