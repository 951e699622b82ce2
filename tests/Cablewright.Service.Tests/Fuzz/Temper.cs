namespace Cablewright.Service.Tests.Fuzz;

/// <summary>What a random document is like as a whole.</summary>
/// <param name="Stated">The likelihood that a member that may be left out is stated.</param>
/// <param name="Wide">The likelihood that a value lies anywhere in its range rather than near its example.</param>
/// <param name="Extreme">The likelihood that it is the least or the greatest one accepted.</param>
/// <param name="Open">The likelihood that a run's conductor may be left open.</param>
/// <param name="OddNames">Whether names are of any form that is accepted.</param>
internal sealed record Temper(double Stated, double Wide, double Extreme, double Open, bool OddNames)
{
    public static Temper Of(Dice dice) => new(
        dice.OneOf(0.05, 0.2, 0.4, 0.7, 0.95),
        dice.OneOf(0, 0, 0.1, 0.5),
        dice.OneOf(0, 0, 0, 0.05, 0.05, 0.5),
        dice.OneOf(0, 0, 0.1, 0.3, 1),
        dice.Chance(0.15));
}
