namespace Cablewright.Service.Documents;

/// <summary>A part of a path that a caller fills in.</summary>
/// <param name="Name">Its name in the route.</param>
/// <param name="Description">What it is.</param>
/// <param name="Example">A right value.</param>
internal sealed record PathParameter(string Name, string Description, string Example);
