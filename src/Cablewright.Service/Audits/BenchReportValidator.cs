using Cablewright.Contract.Audits;
using Cablewright.Service.Rulesets;
using Cablewright.Service.Validation;
using FluentValidation;

namespace Cablewright.Service.Audits;

/// <summary>Checks what a bench report says.</summary>
internal sealed class BenchReportValidator : ContractValidator<BenchReport>
{
    public BenchReportValidator()
    {
        RuleFor(report => report).Custom(CheckMeasured);
        RuleFor(report => report.Ruleset).Custom(RulesetCheck.Check);
    }

    private static void CheckMeasured(BenchReport report, ValidationContext<BenchReport> context)
    {
        if (report.Strands is null && report.Resistance is null && report.Mass is null)
            context.AddFault(
                null, AuditCodes.NothingMeasured, "nothing was measured", "at least one of strands, resistance and mass");
    }
}
