using System.Text.Json;

namespace Cablewright.Service.Json;

/// <summary>An array of items of one shape.</summary>
internal sealed class ArrayShape(Shape item, Size size) : Shape("an array", JsonValueKind.Array)
{
    public override string? Accepted => size.Accepted("items");

    protected override void CheckContent(JsonElement value, Walk walk)
    {
        int count = value.GetArrayLength();
        if (count < size.Least) walk.Add(ShapeCodes.TooFewItems, $"{count} items; at least {size.Least} expected", null, Accepted);
        if (count > size.Most) walk.Add(ShapeCodes.TooManyItems, $"{count} items; at most {size.Most} accepted", null, Accepted);
        int index = 0;
        foreach (JsonElement sent in value.EnumerateArray())
        {
            walk.Enter(index++);
            item.Check(sent, walk);
            walk.Leave();
        }
    }
}
