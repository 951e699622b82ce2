namespace Cablewright.Service.Tests.Fuzz;

/// <summary>How much is in a random build: little mostly, so that many can be tried, at times as much as is accepted.</summary>
/// <param name="Amplifiers">How many amplifiers.</param>
/// <param name="Batteries">How many batteries are listed; with none, one is assumed.</param>
/// <param name="Loops">How many supply runs beyond those that join everything.</param>
/// <param name="ChargesAtPlace">The alternator stands at a place of its own.</param>
internal sealed record BuildSize(int Amplifiers, int Batteries, int Loops, bool ChargesAtPlace)
{
    public static BuildSize Of(Dice dice)
    {
        bool isLarge = dice.Chance(0.003);
        return new(
            dice.Weighted(60, 22, 10, 6, 2) switch
            {
                _ when isLarge => dice.Between(8, 64),
                4 => dice.Between(5, 10),
                int few => few + 1,
            },
            dice.Weighted(20, 32, 30, 12, 4, 2) switch
            {
                _ when isLarge => dice.Between(0, 16),
                5 => dice.Between(5, 16),
                int few => few,
            },
            isLarge ? dice.Below(300) : dice.Weighted(70, 20, 6, 3, 1),
            dice.Chance(0.2));
    }
}
