using System.Text.Json.Nodes;
using Cablewright.Contract.Assessments;
using Cablewright.Service.Json;

namespace Cablewright.Service.Problems;

/// <summary>One thing wrong with a request: where, what, and what would be right.</summary>
/// <param name="Pointer">The member, as a JSON pointer (RFC 6901); empty for the whole body.</param>
/// <param name="Code">A stable, dotted code for programs.</param>
/// <param name="Detail">The reason, for people: plain and short.</param>
/// <param name="Value">What was sent, shortened where it is long; <c>null</c> where nothing was.</param>
/// <param name="Accepted">What would be right, where that can be said.</param>
public sealed record Fault(string Pointer, string Code, string Detail, JsonNode? Value = null, string? Accepted = null)
{
    /// <summary>The values of which its sentences are made, where there are any.</summary>
    public IReadOnlyDictionary<string, Param>? Params { get; init; }

    /// <summary>The same where the document that it was found in stands at a place of a larger one.</summary>
    /// <param name="place">JSON pointer of that place.</param>
    public Fault Below(string place) => this with { Pointer = place + Pointer };

    /// <summary>Stands for those beyond the ones that are listed.</summary>
    /// <param name="most">How many are listed.</param>
    public static Fault More(int most) => new("", ShapeCodes.More, $"there are more faults than the {most} listed");
}
