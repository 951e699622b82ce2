using System.Runtime.CompilerServices;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;
using Cablewright.Reports.Messages;

namespace Cablewright.Reports;

/// <summary>What sentences need of a complete build.</summary>
internal static class BuildWords
{
    private static readonly ConditionalWeakTable<Build, Speech> Speeches = [];

    extension(CompleteBuild build)
    {
        /// <summary>Figures in the units of the build's answer.</summary>
        public Phrase Phrase => new(build.Stated.Units);

        /// <summary>Sentences in the units and names of the build's answer.</summary>
        public Speech Speech => build.Stated.Speech;
    }

    extension(Build build)
    {
        /// <summary>Sentences in the units and names of the build's answer; made once, since every writer asks for
        /// them.</summary>
        public Speech Speech => Speeches.GetValue(build, static build => new Speech(build.Units, new GivenNames(build)));
    }
}
