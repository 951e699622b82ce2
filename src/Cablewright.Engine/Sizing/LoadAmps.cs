namespace Cablewright.Engine.Sizing;

/// <summary>The least that an amplifier draws in any choice that keeps a goal.</summary>
/// <param name="Share">Root-mean-square over full current.</param>
/// <param name="Running">Engine running.</param>
/// <param name="AtLowest">At the lowest supply voltage; 0 where it draws less than with the engine running.</param>
/// <param name="Most">The most that a fuse is chosen for.</param>
internal readonly record struct LoadAmps(double Share, double Running, double AtLowest, double Most);
