using Cablewright.Service.Documents;
using Cablewright.Service.Json;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Records;

/// <summary>Where a recorded assessment is.</summary>
internal static class RecordAddress
{
    public const string OfOne = "/v1/assessments/{id}";

    /// <summary>The shop has no such record.</summary>
    public static ProblemAnswer Nothing(string id) =>
        ProblemAnswer.NotFound($"The shop of this key keeps no record \"{Excerpt.Of(id)}\".");

    public static readonly PathParameter Id = new(
        "id", "The id of a recorded assessment.", "asm_2c26b46b68ffc68ff99b453c1d30413413422d706483bfa0f98a5e886266e7ae");
}
