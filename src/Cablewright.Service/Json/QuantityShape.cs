using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;
using Cablewright.Service.Quantities;

namespace Cablewright.Service.Json;

/// <summary>Text that holds a quantity. A bare number is the likeliest slip, so that it is told which unit to add.</summary>
internal sealed class QuantityShape(QuantityRule rule) : Shape("a quantity with its unit, as text", JsonValueKind.String)
{
    public override string Accepted => rule.Accepted;

    protected override void CheckContent(JsonElement value, Walk walk)
    {
        if (!JsonText.IsText(value)) walk.Add(ShapeCodes.NotText, JsonText.NotUnicode, Excerpt.Of(value), Accepted);
        else if (walk.ReadsQuantities && rule.Read(value.GetString()).Fault is { } fault) Add(fault, value, walk);
    }

    protected override void CheckOtherType(JsonElement value, Walk walk)
    {
        if (value.ValueKind != JsonValueKind.Number) base.CheckOtherType(value, walk);
        else Add(QuantityFaults.UnitMissing(Encoding.UTF8.GetString(JsonMarshal.GetRawUtf8Value(value)), rule), value, walk);
    }

    private static void Add(QuantityFault fault, JsonElement value, Walk walk) =>
        walk.Add(fault.Code, fault.Detail, Excerpt.Of(value), fault.Accepted);
}
