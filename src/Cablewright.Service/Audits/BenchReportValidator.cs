using Cablewright.Contract.Audits;
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
        RuleFor(report => report.Claim!).SetValidator(new ContractValidator<CableClaim>());
        RuleFor(report => report.Strands!).SetValidator(new ContractValidator<StrandMeasurement>());
        RuleFor(report => report.Resistance!).SetValidator(new ContractValidator<ResistanceMeasurement>());
        RuleFor(report => report.Mass!).SetValidator(new ContractValidator<MassMeasurement>());
    }

    private static void CheckMeasured(BenchReport report, ValidationContext<BenchReport> context)
    {
        if (report.Strands is null && report.Resistance is null && report.Mass is null)
            context.AddFault(
                null, ContentCodes.NothingMeasured, "nothing was measured", "at least one of strands, resistance and mass");
    }
}
