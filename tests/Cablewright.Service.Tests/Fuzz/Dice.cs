namespace Cablewright.Service.Tests.Fuzz;

/// <summary>The chances of one case: the same seed and number throw the same everywhere.</summary>
internal sealed class Dice(int seed, int number)
{
    private readonly Random random = new(Mix(Mix(seed) + number));

    /// <summary>Whether something of this likelihood, 0 to 1, comes about.</summary>
    public bool Chance(double likelihood) => random.NextDouble() < likelihood;

    /// <summary>A number from 0 up to but not including a limit.</summary>
    public int Below(int limit) => random.Next(limit);

    /// <summary>A number between two, both included.</summary>
    public int Between(int least, int most) => random.Next(least, most + 1);

    /// <summary>A real number between two.</summary>
    public double Between(double least, double most) => least + (most - least) * random.NextDouble();

    /// <summary>A real number between two positive ones, every order of magnitude as likely as any other.</summary>
    public double Across(double least, double most) => least * Math.Pow(most / least, random.NextDouble());

    /// <summary>One of several, each as likely as any other.</summary>
    public T OneOf<T>(params IReadOnlyList<T> choices) => choices[Below(choices.Count)];

    /// <summary>A few of several, none twice, in any order.</summary>
    public T[] Some<T>(int count, IReadOnlyList<T> choices)
    {
        T[] shuffled = [.. choices];
        random.Shuffle(shuffled);
        return shuffled[..Math.Min(count, shuffled.Length)];
    }

    /// <summary>Which of several comes about, by their weights.</summary>
    public int Weighted(params ReadOnlySpan<int> weights)
    {
        int left = Below(Sum(weights)), choice = 0;
        while (left >= weights[choice]) left -= weights[choice++];
        return choice;
    }

    /// <summary>Bytes of any value.</summary>
    public byte[] Bytes(int count)
    {
        byte[] bytes = new byte[count];
        random.NextBytes(bytes);
        return bytes;
    }

    private static int Sum(ReadOnlySpan<int> weights)
    {
        int sum = 0;
        foreach (int weight in weights) sum += weight;
        return sum;
    }

    /// <summary>Spreads neighbouring numbers far apart, since the generator's first throws follow its seed closely.</summary>
    private static int Mix(int value)
    {
        uint mixed = unchecked((uint)value + 0x9E3779B9u);
        mixed = unchecked((mixed ^ (mixed >> 16)) * 0x21F0AAADu);
        mixed = unchecked((mixed ^ (mixed >> 15)) * 0x735A2D97u);
        return (int)((mixed ^ (mixed >> 15)) & int.MaxValue);
    }
}
