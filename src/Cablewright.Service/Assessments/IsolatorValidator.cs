using Cablewright.Contract.Builds;
using Cablewright.Service.Json;
using Cablewright.Service.Validation;
using Cablewright.Vocabulary;
using FluentValidation;

namespace Cablewright.Service.Assessments;

/// <summary>Checks what parts two batteries.</summary>
internal sealed class IsolatorValidator : ContractValidator<Isolator>
{
    /// <summary>The figures that one kind alone has.</summary>
    private static readonly (string Member, Func<Isolator, string?> Stated, IsolatorKind Owner)[] Owned =
    [
        (nameof(Isolator.ContactResistance), isolator => isolator.ContactResistance, IsolatorKind.Relay),
        (nameof(Isolator.ForwardVoltage), isolator => isolator.ForwardVoltage, IsolatorKind.Diode),
        (nameof(Isolator.OutputVoltage), isolator => isolator.OutputVoltage, IsolatorKind.DcDcCharger),
        (nameof(Isolator.Efficiency), isolator => isolator.Efficiency, IsolatorKind.DcDcCharger),
    ];

    public IsolatorValidator() => RuleFor(isolator => isolator).Custom(CheckKind);

    private static void CheckKind(Isolator isolator, ValidationContext<Isolator> context)
    {
        foreach ((string member, Func<Isolator, string?> stated, IsolatorKind owner) in Owned)
        {
            if (stated(isolator) is { } text && owner != isolator.Kind)
                context.AddFault(
                    member,
                    BuildCodes.IsolatorMemberForeign,
                    $"an isolator of kind \"{isolator.Kind.Word()}\" does not have this",
                    $"\"kind\": \"{owner.Word()}\", or not this member",
                    Excerpt.Of(text));
        }

        if (isolator.Kind is IsolatorKind.DcDcCharger && isolator.RatedCurrent is null)
            context.AddFault(
                null,
                BuildCodes.IsolatorRatingMissing,
                "a charger limits the current, and nothing says to how much",
                "\"ratedCurrent\", its output current");
    }
}
