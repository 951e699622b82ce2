namespace Cablewright.Engine.Sizing;

/// <summary>What is proven of the current of an amplifier.</summary>
/// <param name="Share">Root-mean-square over full current.</param>
/// <param name="Least">The least with nothing lost, engine running.</param>
/// <param name="LeastAtLowest">The least with nothing lost, at the lowest supply voltage.</param>
/// <param name="Running">The least, engine running.</param>
/// <param name="AtLowest">The least at the lowest supply voltage; 0 where it draws less than with the engine running.</param>
/// <param name="MostRunning">The most while fuses are chosen, engine running.</param>
/// <param name="MostAtLowest">The most while fuses are chosen, at the lowest supply voltage.</param>
internal readonly record struct LoadAmps(
    double Share, double Least, double LeastAtLowest, double Running, double AtLowest, double MostRunning, double MostAtLowest)
{
    public double Warming => Share * Running;

    public double LowestThermal => Share * AtLowest;

    public double LeastThermal => Share * LeastAtLowest;

    public double MostThermal => Share * MostRunning;

    public double MostLowestThermal => Share * MostAtLowest;

    /// <summary>The same for a run that carries this current alone.</summary>
    public RunAmps OnOwnRun => new(
        Warming,
        Math.Max(Warming, LowestThermal),
        Math.Max(Least, LeastThermal),
        Math.Max(MostRunning, MostLowestThermal),
        Math.Max(Running, LowestThermal),
        Math.Max(MostThermal, MostLowestThermal),
        Running);

    /// <summary>What holds of both.</summary>
    public LoadAmps Or(LoadAmps other) => this with
    {
        Running = Math.Min(Running, other.Running),
        AtLowest = Math.Min(AtLowest, other.AtLowest),
        MostRunning = Math.Max(MostRunning, other.MostRunning),
        MostAtLowest = Math.Max(MostAtLowest, other.MostAtLowest),
    };
}
