using Cablewright.Engine.Completion;
using Cablewright.Reports.Messages;

namespace Cablewright.Reports;

/// <summary>What sentences need of a complete build.</summary>
internal static class BuildWords
{
    extension(CompleteBuild build)
    {
        /// <summary>Figures in the units of the build's answer.</summary>
        public Phrase Phrase => new(build.Stated.Units);

        /// <summary>Sentences in the units and names of the build's answer.</summary>
        public Speech Speech => new(build.Stated.Units, new GivenNames(build.Stated));
    }
}
