using Cablewright.Vocabulary;

namespace Cablewright.Contract.Audits;

/// <summary>The area by one way.</summary>
public sealed record AreaByWay
{
    /// <summary>The way.</summary>
    public required AuditWay Way { get; init; }

    /// <summary>The area, in mm².</summary>
    public required Bounds AreaMm2 { get; init; }
}
