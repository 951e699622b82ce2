namespace Cablewright.Engine.Rules;

/// <summary>One kind of finding.</summary>
/// <param name="Code">Its stable code.</param>
/// <param name="Meaning">What it says.</param>
public sealed record FindingCode(string Code, string Meaning);
