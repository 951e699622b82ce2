using Cablewright.Contract.Builds;
using Cablewright.Service.Problems;
using Cablewright.Service.Quantities;
using Cablewright.Service.Validation;
using FluentValidation;

namespace Cablewright.Service.Assessments;

/// <summary>Checks one fuse.</summary>
internal sealed class FuseValidator : ContractValidator<Fuse>
{
    private static readonly Fuse NotFitted = new() { Fitted = false };

    private static readonly QuantityRule Share = QuantityRule.Of<OpeningTime>(nameof(OpeningTime.ShareOfRating));

    public FuseValidator()
    {
        RuleFor(fuse => fuse).Custom(CheckFitted);
        CheckNestedFirst();
        RuleFor(fuse => fuse.OpeningTimes).Custom(CheckOpeningTimes);
    }

    private static void CheckOpeningTimes(IReadOnlyList<OpeningTime>? points, ValidationContext<Fuse> context)
    {
        if (points is null) return;
        foreach ((int index, Fault fault) in Ascending.Faults(
            Share, points.Select(point => point.ShareOfRating), BuildCodes.OpeningTimesOutOfOrder, "current",
            "each point at a larger current than the one before"))
            context.AddFault($"[{index}].{nameof(OpeningTime.ShareOfRating)}", fault);
        if (points.Count == 0 || points[^1].Slowest is null)
            context.AddFault(
                "", BuildCodes.OpeningTimesWithoutEnd, "no point says by when the fuse has opened",
                "\"slowest\" on the last point at least", null);
    }

    private static void CheckFitted(Fuse fuse, ValidationContext<Fuse> context)
    {
        if (fuse.Fitted is not false || fuse == NotFitted) return;
        context.AddFault(
            nameof(Fuse.Fitted),
            BuildCodes.FuseNotFitted,
            "a fuse that is not fitted has no figures",
            "fitted alone, or no \"fitted\": false",
            false);
    }
}
