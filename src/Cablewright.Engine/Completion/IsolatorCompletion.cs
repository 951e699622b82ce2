using Cablewright.Engine.Builds;
using Cablewright.Engine.Rulesets;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Completion;

/// <summary>Fills in what is not stated of what parts two batteries.</summary>
internal static class IsolatorCompletion
{
    public static CompleteIsolator Complete(
        Isolator isolator, int? run, SupplySetting setting, AssumptionList assumptions)
    {
        var at = new Target(Part.Isolator, run);
        IsolatorSection usual = assumptions.Ruleset.Isolator;
        double contact = isolator.Kind is not IsolatorKind.Relay ? 0 : assumptions.Take(
            isolator.ContactOhms, AssumptionKind.ContactResistance, at[Member.ContactResistance], usual.ContactResistance);
        double fall = isolator.Kind is not IsolatorKind.Diode ? 0 : assumptions.Take(
            isolator.ForwardVolts, AssumptionKind.ForwardVoltage, at[Member.ForwardVoltage], usual.DiodeFall);
        if (isolator.Kind is not IsolatorKind.DcDcCharger)
            return new CompleteIsolator(isolator.Kind, isolator.RatedAmps, contact, fall, setting.ChargingVolts - fall, 0);
        double output = assumptions.Take(
            isolator.OutputVolts, AssumptionKind.ChargerOutput, at[Member.OutputVoltage], usual.ChargerOutput,
            setting.NominalFactor, Figure.Volts);
        double efficiency = assumptions.Take(
            isolator.Efficiency, AssumptionKind.ChargerEfficiency, at[Member.Efficiency], usual.ChargerEfficiency);
        return new CompleteIsolator(
            isolator.Kind, isolator.RatedAmps, 0, 0, output, output * isolator.RatedAmps!.Value / efficiency);
    }
}
