using System.Text.Json;

namespace Cablewright.Service.Json;

/// <summary>What one place of a request must look like.</summary>
/// <param name="expected">What is due there, for people: <c>an array</c>.</param>
/// <param name="due">The JSON type due.</param>
internal abstract class Shape(string expected, JsonValueKind due)
{
    public string Expected => expected;

    /// <summary>What would be right in more detail, where there is more to say.</summary>
    public virtual string? Accepted => null;

    /// <summary>Adds everything wrong with a value to the walk.</summary>
    public void Check(JsonElement value, Walk walk)
    {
        JsonValueKind sent = value.ValueKind == JsonValueKind.False ? JsonValueKind.True : value.ValueKind;
        if (sent == due) CheckContent(value, walk);
        else if (sent != JsonValueKind.Null) CheckOtherType(value, walk);
        else walk.Add(ShapeCodes.Null, $"null is not accepted; expected {expected}", null, Accepted);
    }

    /// <summary>The value has the JSON type due.</summary>
    protected abstract void CheckContent(JsonElement value, Walk walk);

    /// <summary>The value has another JSON type.</summary>
    protected virtual void CheckOtherType(JsonElement value, Walk walk) =>
        walk.Add(ShapeCodes.WrongType, $"expected {expected}, found {Found(value.ValueKind)}", Excerpt.Of(value), Accepted);

    private static string Found(JsonValueKind kind) => kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "an array",
        JsonValueKind.String => "text",
        JsonValueKind.Number => "a number",
        _ => "true or false",
    };
}
