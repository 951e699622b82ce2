using Cablewright.Contract.Assessments;
using Cablewright.Engine.Builds;
using Cablewright.Reports.Messages;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Faults;

/// <summary>
/// Something in a build that makes it impossible to say what it means, such as a run to a place that is not there.
/// </summary>
/// <param name="Pointer">The JSON pointer (RFC 6901) of the member at fault.</param>
/// <param name="Code">A stable, dotted code.</param>
/// <param name="Detail">What is wrong, naming the run or place.</param>
/// <param name="Accepted">What would be right.</param>
/// <param name="Params">The values of which detail and what is accepted are made; <c>null</c> where there are none.</param>
public sealed record WrittenFault(
    string Pointer, string Code, string Detail, string Accepted, IReadOnlyDictionary<string, Param>? Params);

/// <summary>Puts what makes it impossible to say what a build means into words.</summary>
public static class BuildFaultWriter
{
    /// <summary>The codes of all that can be found.</summary>
    public static IReadOnlyList<CodeMeaning> Codes => FaultFinder.Codes;

    /// <summary>What makes it impossible to say what the build means; empty for a build that can be assessed.</summary>
    /// <remarks>Only ids, places, sides and which kinds of figures are stated matter here, never their values.</remarks>
    /// <param name="build">The build.</param>
    public static IReadOnlyList<WrittenFault> Find(Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        var speech = new Speech(build.Units);
        return [.. FaultFinder.Find(build).Select(fault => Write(fault, speech))];
    }

    /// <summary>Refuses a build with faults.</summary>
    /// <exception cref="ArgumentException">The build has faults.</exception>
    internal static void ThrowIfFaulty(Build build)
    {
        if (Find(build) is [var first, ..]) throw new ArgumentException(first.Detail, nameof(build));
    }

    private static WrittenFault Write(BuildFault fault, Speech speech)
    {
        Params values = ValuesOf(fault);
        string key = "fault." + Keys.Of(fault.Kind);
        string detail = fault.Nearest is null ? key + ".detail" : key + ".nearest.detail";
        return new WrittenFault(
            Pointers.Of(fault.At), fault.Code, speech.Text(detail, values), speech.Text(key + ".accepted", values),
            values.OrNone);
    }

    private static Params ValuesOf(BuildFault fault)
    {
        var values = new Params();
        if (fault.Id is { } id) values["id"] = id;
        if (fault.Place is { } place) values["place"] = place;
        if (fault.Nearest is { } nearest) values["nearest"] = nearest;
        if (fault.Kind is BuildFaultKind.IdTaken) values["takenBy"] = Pointers.Of(fault.TakenBy);
        if (fault.Others is { } others) values["others"] = Param.Of(others);
        return values;
    }
}
