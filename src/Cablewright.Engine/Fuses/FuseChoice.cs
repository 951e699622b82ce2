namespace Cablewright.Engine.Fuses;

/// <summary>When a fuse that is left open is of a family.</summary>
/// <param name="Order">Its place among all families: the first that serves is chosen.</param>
/// <param name="IsUsual">Whether it is chosen where the build names no families.</param>
/// <param name="Source">Where that comes from.</param>
/// <param name="Provenance">How it was come by.</param>
public sealed record FuseChoice(int Order, bool IsUsual, string Source, string Provenance);
