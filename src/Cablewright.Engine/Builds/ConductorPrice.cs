using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Builds;

/// <summary>What one conductor costs.</summary>
/// <param name="Size">Its size.</param>
/// <param name="Material">Its metal.</param>
/// <param name="PerMetre">The price of one metre, more than 0, in the currency of the build.</param>
public sealed record ConductorPrice(ConductorSize Size, Material Material, double PerMetre);
