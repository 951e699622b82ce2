using Cablewright.Contract.Schema;
using Cablewright.Vocabulary;

namespace Cablewright.Contract.Assessments;

/// <summary>
/// What would make a build that fails feasible. Every change named was made to the build and assessed in full, with what is open
/// chosen anew; the supply's voltage and the limits are never changed.
/// </summary>
public sealed record Feasibility
{
    /// <summary>A sentence or two that can be read out, in the units of the build.</summary>
    [Example("As it is stated, 1 rule cannot be kept; the findings say by how much. "
        + "The smallest change after which no rule fails: Make run \"main\" no longer than 16 ft (now 20 ft).")]
    public required string Summary { get; init; }

    /// <summary>The codes of the findings that fail, the most dangerous first; the findings themselves say by how much.</summary>
    [Example("amplifier.drop-over-limit")]
    public required IReadOnlyList<string> BrokenRules { get; init; }

    /// <summary>
    /// Changes after which no rule fails, the smallest first: the one that touches the fewest parts, among equals the one with
    /// the smallest <c>share</c>; at most three of a kind. Empty where none was found.
    /// </summary>
    public required IReadOnlyList<Change> Changes { get; init; }

    /// <summary>Where <c>changes</c> is empty: the change tried after which the fewest rules fail.</summary>
    public Change? Nearest { get; init; }

    /// <summary>Every kind of change was tried; <c>false</c>: the work budget ended first.</summary>
    [Example(true)]
    public required bool Complete { get; init; }
}

/// <summary>A change to a build, and what is then left of its findings.</summary>
public sealed record Change
{
    /// <summary>What it is about.</summary>
    public required ChangeKind Kind { get; init; }

    /// <summary>What to do, in the units of the build.</summary>
    [Example("Make run \"main\" no longer than 16 ft (now 20 ft).")]
    public required string Message { get; init; }

    /// <summary>
    /// The values of which <c>message</c> is made, for a sentence of one's own: numbers in the unit that ends their name, ids and
    /// words; absent where there are none.
    /// <c>step</c> says what is to be done; of several steps <c>steps</c> holds the values of each.
    /// </summary>
    [Example("""{ "step": "shorten", "run": "main", "metres": 4.8768, "nowMetres": 6.096 }""", IsJson = true)]
    public IReadOnlyDictionary<string, Param>? Params { get; init; }

    /// <summary>The ids of the runs that change.</summary>
    [Example("main")]
    public required IReadOnlyList<string> Runs { get; init; }

    /// <summary>The ids of the amplifiers that change.</summary>
    [Example("bass")]
    public required IReadOnlyList<string> Amplifiers { get; init; }

    /// <summary>What to state otherwise in the build, member by member.</summary>
    public required IReadOnlyList<Edit> Edits { get; init; }

    /// <summary>
    /// How far what changes is from what it was, as a share of it; of several parts the largest. Of a length or a power what is
    /// taken away, of a conductor what is taken off its resistance, of a rating its change; 1 where a part is added.
    /// </summary>
    [Figure("1", 0.2)]
    public required double Share { get; init; }

    /// <summary>Metal of all conductors of the build after the change, less that before it, in grams.</summary>
    [Figure("g", -470, Smallest = double.NegativeInfinity)]
    public required double AddedMassGrams { get; init; }

    /// <summary>The verdict of the build after it.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>The codes of the findings that then remain, infos left out, the worst first.</summary>
    [Example("amplifier.drop-over-target")]
    public required IReadOnlyList<string> Remaining { get; init; }
}

/// <summary>One member of a build and what it is to hold.</summary>
public sealed record Edit
{
    /// <summary>
    /// The JSON pointer (RFC 6901) of the member; where it ends in <c>-</c>, the place after the last item of a list, as in RFC
    /// 6902.
    /// </summary>
    [Example("/runs/0/length")]
    public required string Pointer { get; init; }

    /// <summary>What it holds, as the build writes it; absent where it is not stated.</summary>
    [Example("20 ft")]
    public string? From { get; init; }

    /// <summary>
    /// What it is to hold, as the build writes it: a quantity with its unit, a word, a size, a count or <c>true</c> or
    /// <c>false</c>; absent where it is to be left out.
    /// </summary>
    [Example("16 ft")]
    public string? To { get; init; }
}
