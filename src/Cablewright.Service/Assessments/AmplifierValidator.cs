using Cablewright.Contract.Builds;
using Cablewright.Service.Json;
using Cablewright.Service.Validation;
using FluentValidation;

namespace Cablewright.Service.Assessments;

/// <summary>Checks one amplifier.</summary>
internal sealed class AmplifierValidator : ContractValidator<Amplifier>
{
    public AmplifierValidator() => RuleFor(amplifier => amplifier).Custom(CheckProgramme);

    private static void CheckProgramme(Amplifier amplifier, ValidationContext<Amplifier> context)
    {
        if (amplifier.Programme is null || amplifier.CrestFactor is null) return;
        context.AddFault(
            nameof(Amplifier.CrestFactor),
            BuildCodes.ProgrammeTwice,
            "programme and crestFactor both say what the music is like",
            "one of them",
            Excerpt.Of(amplifier.CrestFactor));
    }
}
