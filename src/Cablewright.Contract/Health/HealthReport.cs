using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Health;

/// <summary>How the service is.</summary>
public sealed record HealthReport
{
    /// <summary>
    /// <c>live</c>: the process answers. <c>ready</c>: it also computes a built-in reference build to its known answer and
    /// has read the catalogue.
    /// </summary>
    [Example("ready")]
    public required string Status { get; init; }

    /// <summary>The version of the computation.</summary>
    [Example("1.0.0")]
    public required string EngineVersion { get; init; }
}
