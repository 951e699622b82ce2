using System.Text.Json.Nodes;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Schema;

namespace Cablewright.Contract.Problems;

/// <summary>One fault in a request.</summary>
public sealed record ProblemError
{
    /// <summary>
    /// The JSON pointer (RFC 6901) into the request body; for a query string, a slash and the name of the parameter. Empty for
    /// the body as a whole.
    /// </summary>
    [Example("/runs/2/length")]
    public required string Pointer { get; init; }

    /// <summary>Stable, dotted code of the fault; all are listed in this contract.</summary>
    [Example("quantity.unit-missing")]
    public required string Code { get; init; }

    /// <summary>What is wrong.</summary>
    [Example("A length needs a unit, for example \"16 ft\".")]
    public required string Detail { get; init; }

    /// <summary>
    /// The values of which <c>detail</c> and <c>accepted</c> are made, for a sentence of one's own: numbers in the unit that ends
    /// their name, ids and words; absent where there are none, and
    /// for faults of form.
    /// </summary>
    [Example("""{ "place": "bas", "nearest": "bass" }""", IsJson = true)]
    public IReadOnlyDictionary<string, Param>? Params { get; init; }

    /// <summary>The value that was sent, any JSON type, shortened where it is long; absent where none was sent.</summary>
    [Example("16")]
    public JsonNode? Value { get; init; }

    /// <summary>What would be right.</summary>
    [Example("0.01 m to 100 m, for example \"16 ft\"")]
    public string? Accepted { get; init; }
}
