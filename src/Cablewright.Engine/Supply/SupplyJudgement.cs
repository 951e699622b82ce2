using Cablewright.Engine.Completion;
using Cablewright.Engine.Evaluation;
using Cablewright.Engine.Numerics;
using Cablewright.Engine.Rules;
using Cablewright.Engine.Wiring;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Supply;

/// <summary>Holds the rules about what is drawn and what can be given against a design.</summary>
internal sealed class SupplyJudgement
{
    private readonly CompleteBuild build;
    private readonly EnergyBalance balance;
    private readonly List<Violation> violations = [];

    private SupplyJudgement(CompleteBuild build, EnergyBalance balance)
    {
        this.build = build;
        this.balance = balance;
    }

    public static SupplyReport Of(BuildModel model, DesignEvaluation evaluation)
    {
        CompleteBuild build = model.Build;
        var balance = new EnergyBalance(model, evaluation.Envelope);
        SupplyCircuit? circuit = evaluation.SolvableShare < 1 ? null : new SupplyCircuit(model, evaluation.Envelope);
        IReadOnlyList<SupplyCaseResult> cases = circuit is null ? [] : new SupplyCases(build, circuit, balance).All();
        var judgement = new SupplyJudgement(build, balance);
        judgement.JudgeCurrents();
        judgement.JudgeChargers();
        judgement.JudgeChemistries();
        judgement.JudgeCapacitors();
        foreach (SupplyCaseResult each in cases) judgement.JudgeCase(each);
        return new SupplyReport(
            balance, circuit, cases, cases.FirstOrDefault(each => each.Name is SupplyCaseName.EngineOff)?.MinutesToLimit,
            judgement.violations);
    }

    private void Add(ViolationKind kind, Severity severity, int index, double measured, double limit) =>
        violations.Add(new Violation(kind, severity, index, false, measured, limit));

    private void JudgeCurrents()
    {
        if (build.Supply.HotAmps is not { } hot) return;
        double left = Math.Max(0, balance.Available(hot)), atIdle = Math.Max(0, balance.Available(build.Supply.IdleAmps!.Value));
        bool isConverter = build.Supply.IsConverter;
        if (Significant.Exceeds(balance.AverageAmps, left))
            Add(ViolationKind.AverageAboveAlternator, Severity.Caution, 0, balance.AverageAmps, left);
        else if (Significant.Exceeds(balance.PeakAmps, left))
            Add(
                isConverter ? ViolationKind.PeakAboveConverter : ViolationKind.PeakAboveAlternator,
                isConverter ? Severity.Caution : Severity.Info, 0, balance.PeakAmps, left);
        if (!isConverter && Significant.Exceeds(balance.AverageAmps, atIdle))
            Add(ViolationKind.AverageAboveIdle, Severity.Info, 0, balance.AverageAmps, atIdle);
    }

    /// <summary>A group behind a charger is named by the charger's run.</summary>
    private void JudgeChargers()
    {
        foreach (SupplyGroup group in balance.BehindChargers)
        {
            double asked = balance.AverageOf(group), given = balance.ChargedAmps(group);
            if (Significant.Exceeds(asked, given))
                Add(ViolationKind.AverageAboveCharger, Severity.Caution, group.ChargersTo[0], asked, given);
        }
    }

    private void JudgeChemistries()
    {
        foreach (SupplyGroup group in balance.Running)
        {
            int lithium = group.Batteries.FirstOrDefault(battery => IsLithium(battery), -1);
            int lead = group.Batteries.FirstOrDefault(battery => !IsLithium(battery), -1);
            if (lithium >= 0 && lead >= 0)
                violations.Add(new Violation(ViolationKind.MixedChemistries, Severity.Caution, lithium) { Other = lead });
        }
    }

    private bool IsLithium(int battery) => build.Batteries[battery].Chemistry is Chemistry.LiFePo4;

    private void JudgeCapacitors()
    {
        double burst = build.Ruleset["supply.burst"].Value;
        for (int capacitor = 0; capacitor < build.Capacitors.Count; capacitor++)
        {
            double holds = Stiffening.Of(build, balance, capacitor).HoldsMilliseconds;
            if (Significant.Exceeds(burst, holds))
                Add(ViolationKind.CapacitorHoldsBriefly, Severity.Info, capacitor, holds, burst);
        }
    }

    private void JudgeCase(SupplyCaseResult each)
    {
        double lowest = build.Ruleset["supply.full-output-voltage"].Value * build.NominalFactor;
        if (each.Name is SupplyCaseName.AtSpeed && each.LowestVolts is null)
            Add(ViolationKind.FullOutputNotHeld, Severity.Caution, 0, 0, 0);
        else if (each is { Name: SupplyCaseName.AtSpeed, LowestVolts: { } volts } && Significant.Exceeds(lowest, volts))
            Add(ViolationKind.VoltageLowAtFullOutput, Severity.Caution, 0, volts, lowest);
        if (each is { Name: SupplyCaseName.EngineOff, MinutesToLimit: { } minutes }
            && build.Stated.Limits.EngineOffMinutes is { } wished && Significant.Exceeds(wished, minutes))
            Add(ViolationKind.EngineOffTooShort, Severity.Fail, 0, minutes, wished);
    }
}
