using Cablewright.Engine.Numerics;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Audits;

/// <summary>The area by one way.</summary>
/// <param name="Way">The way.</param>
/// <param name="AreaMm2">The area, in mm².</param>
internal readonly record struct AreaByWay(AuditWay Way, Interval AreaMm2);
