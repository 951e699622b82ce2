using Cablewright.Engine.Completion;

namespace Cablewright.Reports;

/// <summary>What sentences need of a complete build.</summary>
internal static class BuildWords
{
    extension(CompleteBuild build)
    {
        /// <summary>Figures in the units of the build's answer.</summary>
        public Phrase Phrase => new(build.Stated.Units);
    }

    extension(SupplyFigures supply)
    {
        /// <summary>What charges the batteries.</summary>
        public string Charger => supply.IsConverter ? "converter" : "hot alternator";
    }
}
