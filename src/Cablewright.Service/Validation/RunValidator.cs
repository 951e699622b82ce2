using Cablewright.Contract.Builds;

namespace Cablewright.Service.Validation;

/// <summary>Checks one run.</summary>
internal sealed class RunValidator : ContractValidator<Run>
{
    public RunValidator()
    {
        RuleFor(run => run.Conductor!).SetValidator(new ContractValidator<Conductor>());
        RuleFor(run => run.Fuse!).SetValidator(new FuseValidator());
        RuleFor(run => run.FarFuse!).SetValidator(new FuseValidator());
        RuleFor(run => run.Isolator!).SetValidator(new IsolatorValidator());
    }
}
