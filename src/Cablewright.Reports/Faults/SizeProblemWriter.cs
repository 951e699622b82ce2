using Cablewright.Contract.Assessments;
using Cablewright.Engine.Conductors;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Faults;

/// <summary>Says why a text is no conductor size.</summary>
public static class SizeProblemWriter
{
    /// <summary>What is wrong.</summary>
    /// <param name="problem">What was found of the text.</param>
    public static string Text(SizeProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return new Speech(UnitSystem.Metric).Text("size." + Keys.Of(problem.Kind), new Params
        {
            ["text"] = problem.Text,
            ["nearest"] = Param.Of(problem.Nearest.Select(size => size.Label)),
        });
    }
}
