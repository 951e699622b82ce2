namespace Cablewright.Reports.Messages;

/// <summary>A sentence and what it is made of.</summary>
/// <param name="Text">The sentence.</param>
/// <param name="Params">Its values by their names.</param>
internal sealed record Message(string Text, Params Params);
