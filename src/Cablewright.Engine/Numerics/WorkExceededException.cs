namespace Cablewright.Engine.Numerics;

/// <summary>A computation took more work than it may.</summary>
/// <param name="meter">The meter that was exceeded; of several the one of the largest part.</param>
public sealed class WorkExceededException(WorkMeter meter)
    : Exception("The computation takes more work than it may.")
{
    /// <summary>The meter that was exceeded.</summary>
    public WorkMeter Meter { get; } = meter;
}
