using Cablewright.Contract.Builds;
using Cablewright.Service.Json;
using Cablewright.Service.Validation;
using FluentValidation;

namespace Cablewright.Service.Assessments;

/// <summary>Checks the converter of a hybrid or electric vehicle.</summary>
internal sealed class ConverterValidator : ContractValidator<Converter>
{
    private const string OneOfTwo = "either \"ratedCurrent\" or \"ratedPower\"";

    public ConverterValidator() => RuleFor(converter => converter).Custom(CheckRating);

    private static void CheckRating(Converter converter, ValidationContext<Converter> context)
    {
        if (converter.RatedCurrent is null && converter.RatedPower is null)
            context.AddFault(
                null, BuildCodes.ConverterRatingMissing, "nothing says how much the converter gives", OneOfTwo);
        else if (converter.RatedCurrent is not null && converter.RatedPower is not null)
            context.AddFault(
                nameof(Converter.RatedPower),
                BuildCodes.ConverterRatingTwice,
                "ratedCurrent and ratedPower both say how much the converter gives",
                OneOfTwo,
                Excerpt.Of(converter.RatedPower));
    }
}
