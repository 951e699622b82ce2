namespace Cablewright.Engine.Completion;

/// <summary>A value that was not stated.</summary>
/// <param name="Pointer">The JSON pointer that it stands for.</param>
/// <param name="Value">The value with its unit.</param>
/// <param name="Reason">Why this value.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Assumption(string Pointer, string Value, string Reason, string Source);
