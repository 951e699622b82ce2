using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;

namespace Cablewright.Reports.Messages;

/// <summary>What people call the parts of a build: sentences say that, where values keep the ids.</summary>
internal sealed class GivenNames
{
    private readonly Dictionary<string, string> places;
    private readonly Dictionary<string, string> runs;

    public GivenNames(Build build)
    {
        places = Of([
            .. build.Amplifiers.Select(part => (part.Id, part.Name)),
            .. build.Vehicle.Batteries.Select(part => (part.Id, part.Name)),
            .. build.Junctions.Select(part => (part.Id, part.Name)),
        ]);
        runs = Of([.. build.Runs.Select(part => (part.Id, part.Name))]);
    }

    /// <summary>The value of a sentence's hole as it is shown.</summary>
    /// <param name="hole">The hole's name, which says whether an id is a run's.</param>
    /// <param name="value">An id, or several.</param>
    public Param Shown(string hole, Param value)
    {
        Dictionary<string, string> known = hole.Contains("run", StringComparison.OrdinalIgnoreCase) ? runs : places;
        return value.Text is { } id ? Shown(id, known)
            : value.List is { } list ? Param.Of(list.Select(item => item.Text is { } each ? Shown(each, known) : ""))
            : value;
    }

    private static string Shown(string id, Dictionary<string, string> known) => known.GetValueOrDefault(id, id);

    private static Dictionary<string, string> Of(IEnumerable<(string Id, string? Name)> parts)
    {
        var known = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach ((string id, string? name) in parts)
        {
            if (name is not null) known.TryAdd(id, name);
        }

        return known;
    }
}
