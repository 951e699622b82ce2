using Cablewright.Engine.Data;
using Cablewright.Engine.Numerics;

namespace Cablewright.Engine.Rulesets;

/// <summary>The continuous currents that isolating relays and diodes are usually rated for.</summary>
public sealed class IsolatorRatings
{
    /// <exception cref="InvalidDataException">The ratings do not rise.</exception>
    internal IsolatorRatings(SourcedNumbers amps)
    {
        Amps = amps;
        if (amps.Values.Zip(amps.Values.Skip(1)).Any(pair => pair.First >= pair.Second))
            throw new InvalidDataException("The ratings of isolators do not rise.");
    }

    /// <summary>All of them, with their source.</summary>
    public SourcedNumbers Amps { get; }

    /// <summary>The smallest that is no less than a current, or <c>null</c> where none is so large.</summary>
    public double? Next(double amps)
    {
        foreach (double rating in Amps.Values)
        {
            if (!Significant.Exceeds(amps, rating)) return rating;
        }

        return null;
    }
}
