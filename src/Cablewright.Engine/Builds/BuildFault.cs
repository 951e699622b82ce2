namespace Cablewright.Engine.Builds;

/// <summary>
/// Something in a build that makes it impossible to say what it means, such as a run to a place that is not there.
/// </summary>
/// <param name="Pointer">The JSON pointer (RFC 6901) of the member at fault.</param>
/// <param name="Code">A stable, dotted code.</param>
/// <param name="Detail">What is wrong, naming the run or place.</param>
/// <param name="Accepted">What would be right.</param>
public sealed record BuildFault(string Pointer, string Code, string Detail, string Accepted);
