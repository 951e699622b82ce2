using Cablewright.Contract.Builds;
using Cablewright.Service.Json;
using Cablewright.Service.Quantities;
using FluentValidation;

namespace Cablewright.Service.Validation;

/// <summary>Checks the alternator.</summary>
internal sealed class AlternatorValidator : ContractValidator<Alternator>
{
    private static readonly QuantityRule Speed = QuantityRule.Of<OutputPoint>(nameof(OutputPoint.Speed));

    public AlternatorValidator()
    {
        CheckNested();
        RuleFor(alternator => alternator.OutputPoints).Custom(CheckOrder);
    }

    private static void CheckOrder(IReadOnlyList<OutputPoint>? points, ValidationContext<Alternator> context)
    {
        double before = double.NaN;
        for (int i = 0; i < points?.Count; i++)
        {
            double speed = SpeedOf(points[i]);
            if (speed <= before) AddOutOfOrder(i, points[i].Speed, context);
            before = speed;
        }
    }

    /// <summary>Not a number where the text cannot be read: a fault of its own, with which no speed compares.</summary>
    private static double SpeedOf(OutputPoint point) =>
        Speed.Read(point.Speed) is { Fault: null } reading ? reading.Value : double.NaN;

    private static void AddOutOfOrder(int index, string speed, ValidationContext<Alternator> context) =>
        context.AddFault(
            $"[{index}].{nameof(OutputPoint.Speed)}",
            ContentCodes.OutputPointsOutOfOrder,
            "this speed is not above the one before it",
            "each point at a higher speed than the one before",
            Excerpt.Of(speed));
}
