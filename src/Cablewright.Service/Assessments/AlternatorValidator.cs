using Cablewright.Contract.Builds;
using Cablewright.Service.Problems;
using Cablewright.Service.Quantities;
using Cablewright.Service.Validation;
using FluentValidation;

namespace Cablewright.Service.Assessments;

/// <summary>Checks the alternator.</summary>
internal sealed class AlternatorValidator : ContractValidator<Alternator>
{
    private static readonly QuantityRule Speed = QuantityRule.Of<OutputPoint>(nameof(OutputPoint.Speed));

    public AlternatorValidator()
    {
        CheckNestedFirst();
        RuleFor(alternator => alternator.OutputPoints).Custom(CheckOrder);
    }

    private static void CheckOrder(IReadOnlyList<OutputPoint>? points, ValidationContext<Alternator> context)
    {
        foreach ((int index, Fault fault) in Ascending.Faults(
            Speed, (points ?? []).Select(point => point.Speed), BuildCodes.OutputPointsOutOfOrder, "speed",
            "each point at a higher speed than the one before"))
            context.AddFault($"[{index}].{nameof(OutputPoint.Speed)}", fault);
    }
}
