using System.Text.Json.Serialization;

namespace Cablewright.Vocabulary;

/// <summary>What the answer to a question is.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<AnswerKind>))]
public enum AnswerKind
{
    /// <summary>Text that holds a number with its unit.</summary>
    [JsonStringEnumMemberName("quantity")]
    Quantity,

    /// <summary>One of the words in <c>choices</c>.</summary>
    [JsonStringEnumMemberName("word")]
    Word,

    /// <summary>A part of the build, written as the contract says: a run, or the points of a curve.</summary>
    [JsonStringEnumMemberName("part")]
    Part,
}
