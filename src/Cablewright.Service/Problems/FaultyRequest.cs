using Cablewright.Contract.Problems;
using Cablewright.Service.Json;

namespace Cablewright.Service.Problems;

/// <summary>The problem that lists the faults of a request.</summary>
internal static class FaultyRequest
{
    private const int Most = ShapeReader.MostFaults;

    /// <summary>Answers with all of them, or with as many as are listed and a word on the others.</summary>
    public static ProblemAnswer Answer(ProblemKind kind, IReadOnlyList<Fault> faults) => new(
        kind,
        Detail(faults),
        [.. (faults.Count > Most ? faults.Take(Most).Append(Fault.More(Most)) : faults).Select(Error)]);

    /// <summary>Answers with what is wrong with the form of a body that was not read.</summary>
    public static ProblemAnswer Of<T>(Shaped<T> body) where T : class => Answer(
        body.Outcome == ShapeOutcome.TooLarge ? ProblemKinds.TooLarge : ProblemKinds.NotUnderstood, body.Faults);

    private static string Detail(IReadOnlyList<Fault> faults) => faults.Count == 1
        ? $"There is 1 fault in the request: {faults[0].Detail}"
        : $"There are {(faults.Count > Most ? $"more than {Most}" : faults.Count)} faults in the request; "
        + $"the first: {faults[0].Detail}";

    private static ProblemError Error(Fault fault) => new()
    {
        Pointer = fault.Pointer,
        Code = fault.Code,
        Detail = fault.Detail,
        Params = fault.Params,
        Value = fault.Value,
        Accepted = fault.Accepted,
    };
}
