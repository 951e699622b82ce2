using System.Text.Json;

namespace Cablewright.Service.Json;

/// <summary>An array of items of one shape.</summary>
internal sealed class ArrayShape(Shape item) : Shape("an array", JsonValueKind.Array)
{
    protected override void CheckContent(JsonElement value, Walk walk)
    {
        int index = 0;
        foreach (JsonElement sent in value.EnumerateArray())
        {
            if (walk.IsOver) return;
            walk.Enter(index++);
            item.Check(sent, walk);
            walk.Leave();
        }
    }
}
