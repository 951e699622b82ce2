using System.Globalization;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Vocabulary;

namespace Cablewright.Drawings.Wiring;

/// <summary>What a finding may be about.</summary>
internal enum PartKind
{
    Run,
    Place,
    Charging,
    Capacitor,
}

/// <summary>A part of a build that is drawn.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Id">Its id; a capacitor's number.</param>
internal sealed record Part(PartKind Kind, string Id);

/// <summary>What is wrong at a part: the worst of it, and the number of the note that says so.</summary>
/// <param name="Severity">How much the worst weighs.</param>
/// <param name="Note">The number of its note; <c>null</c> where it is for information only.</param>
internal sealed record Mark(Severity Severity, int? Note);

/// <summary>The findings by the parts that they are about, and those that a drawing says as notes.</summary>
internal sealed class Marks
{
    private readonly Dictionary<Part, Mark> marks = [];
    private readonly Build build;
    private readonly Assessment answer;

    private Marks(Build build, Assessment answer)
    {
        (this.build, this.answer) = (build, answer);
        Notes = [.. answer.Findings.Where(finding => finding.Severity is not Severity.Info)];
        int number = 0;
        foreach (Finding finding in answer.Findings)
        {
            int? note = finding.Severity is Severity.Info ? null : ++number;
            foreach (string pointer in (string[])[finding.Pointer, .. finding.AlsoAt ?? []])
            {
                // The worst come first.
                if (PartAt(pointer, finding) is { } part) marks.TryAdd(part, new Mark(finding.Severity, note));
            }
        }
    }

    /// <summary>What fails and what is to be looked at, the worst first; a note's number is its place here, from 1.</summary>
    public IReadOnlyList<Finding> Notes { get; }

    public static Marks Of(Build build, Assessment answer) => new(build, answer);

    public Mark? At(Part? part) => part is null ? null : marks.GetValueOrDefault(part);

    /// <summary>The part at a JSON pointer into the build; none where it is about the build as a whole.</summary>
    private Part? PartAt(string pointer, Finding finding) => pointer.Split('/') switch
    {
        [_, "runs", "-", ..] => Added(finding),
        [_, "runs", string run, ..] => At(answer.Runs, run) is { } found ? new(PartKind.Run, found.Id) : null,
        [_, "amplifiers", string amplifier, ..] => Place(At(build.Amplifiers, amplifier)?.Id),
        [_, "junctions", string junction, ..] => Place(At(build.Junctions ?? [], junction)?.Id),
        [_, "vehicle", "batteries", string battery, ..] => Place(At(answer.Supply.Batteries, battery)?.Id),
        [_, "vehicle", "capacitors", string capacitor, ..] => new(PartKind.Capacitor, capacitor),
        [_, "vehicle", "alternator" or "converter", ..] => new(PartKind.Charging, ""),
        _ => null,
    };

    /// <summary>A run that the build does not state: a battery's strap, which is drawn with the battery.</summary>
    private static Part? Added(Finding finding) =>
        Place(finding.Params?.GetValueOrDefault("battery").Text ?? finding.Params?.GetValueOrDefault("amplifier").Text);

    private static Part? Place(string? id) => id is null ? null : new(PartKind.Place, id);

    private static T? At<T>(IReadOnlyList<T> parts, string number) where T : class =>
        int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int index) && index < parts.Count
            ? parts[index]
            : null;
}
