using Cablewright.Contract.Builds;
using FluentValidation;

namespace Cablewright.Service.Validation;

/// <summary>Checks one fuse.</summary>
internal sealed class FuseValidator : ContractValidator<Fuse>
{
    private static readonly Fuse NotFitted = new() { Fitted = false };

    public FuseValidator() => RuleFor(fuse => fuse).Custom(CheckFitted);

    private static void CheckFitted(Fuse fuse, ValidationContext<Fuse> context)
    {
        if (fuse.Fitted is not false || fuse == NotFitted) return;
        context.AddFault(
            nameof(Fuse.Fitted),
            ContentCodes.FuseNotFitted,
            "a fuse that is not fitted has no figures",
            "fitted alone, or no \"fitted\": false",
            false);
    }
}
