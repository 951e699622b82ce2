using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Builds;

/// <summary>What a fuse with its holder costs.</summary>
/// <param name="Family">Its family.</param>
/// <param name="Each">Its price, more than 0, in the currency of the build.</param>
public sealed record FusePrice(FuseFamilyName Family, double Each);

/// <summary>What a terminal costs.</summary>
/// <param name="Size">The conductor that it is made for.</param>
/// <param name="Each">Its price, more than 0, in the currency of the build.</param>
public sealed record TerminalPrice(ConductorSize Size, double Each);
