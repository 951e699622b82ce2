using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;

namespace Cablewright.Service.Documents;

/// <summary>The body of a request.</summary>
/// <param name="Type">Its type.</param>
/// <param name="Shape">The shape that is read: of the whole body, or of each item of a list.</param>
/// <param name="Example">A right one, or a right item of a list.</param>
internal sealed record RequestBody(Type Type, JsonTypeInfo Shape, Func<JsonNode?> Example)
{
    /// <summary>One document.</summary>
    public static RequestBody Of<T>(JsonTypeInfo<T> shape, Func<T> example) =>
        new(typeof(T), shape, () => JsonSerializer.SerializeToNode(example(), shape));

    /// <summary>A list of documents.</summary>
    public static RequestBody ListOf<T>(JsonTypeInfo<T> shape, Func<T> example) =>
        Of(shape, example) with { Type = typeof(IReadOnlyList<T>) };
}
