using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Cablewright.Service.Quantities;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Json;

/// <summary>Makes shapes from the serializer's own description of the contract's types: the two cannot disagree.</summary>
internal static class Shapes
{
    private static readonly ConditionalWeakTable<JsonTypeInfo, Shape> Known = [];

    /// <summary>The shape of a type; made once.</summary>
    /// <exception cref="NotSupportedException">The type holds something that no request of the contract may hold.</exception>
    public static Shape Of(JsonTypeInfo type) => Known.GetValue(type, static type => Make(type, null, 0));

    private static Shape Make(JsonTypeInfo type, PropertyInfo? member, int depth)
    {
        if (depth > ShapeReader.MostDepth) throw new NotSupportedException($"{type.Type} nests too deeply to be sent.");
        return type.Kind switch
        {
            JsonTypeInfoKind.Object when type.PolymorphismOptions is null => new ObjectShape(Members(type, depth)),
            JsonTypeInfoKind.Enumerable => new ArrayShape(Make(type.Options.GetTypeInfo(type.ElementType!), member, depth + 1)),
            JsonTypeInfoKind.None => Scalar(type, member, depth),
            _ => throw new NotSupportedException($"{type.Type} is no shape for a request."),
        };
    }

    private static Member[] Members(JsonTypeInfo type, int depth) =>
    [
        .. type.Properties
            .Where(property => property.Set is not null || property.AssociatedParameter is not null)
            .Select((property, ordinal) => new Member(
                property.Name,
                property.IsRequired,
                !property.IsRequired && property.IsSetNullable,
                Make(type.Options.GetTypeInfo(property.PropertyType), property.AttributeProvider as PropertyInfo, depth + 1),
                ordinal)),
    ];

    private static Shape Scalar(JsonTypeInfo type, PropertyInfo? member, int depth)
    {
        if (Nullable.GetUnderlyingType(type.Type) is { } inner) return Make(type.Options.GetTypeInfo(inner), member, depth);
        if (type.Type.IsEnum) return new WordShape(Words(type), AlsoRead(type.Type));
        if (type.Type == typeof(string)) return Text(member);
        if (type.Type == typeof(bool)) return new FlagShape();
        if (type.Type == typeof(int)) return new WholeNumberShape();
        if (type.Type == typeof(double)) return new NumberShape();
        throw new NotSupportedException($"{type.Type} is no shape for a request.");
    }

    private static Shape Text(PropertyInfo? member) =>
        member is not null && QuantityRule.Of(member) is { } rule ? new QuantityShape(rule) : new TextShape();

    private static IEnumerable<string> AlsoRead(Type type) => type.GetFields(BindingFlags.Public | BindingFlags.Static)
        .SelectMany(member => member.GetCustomAttribute<AlsoReadAttribute>()?.Words ?? []);

    /// <summary>Asked of the serializer itself: only it knows which converter and naming the enumeration has.</summary>
    private static string[] Words(JsonTypeInfo type) =>
    [
        .. Enum.GetValuesAsUnderlyingType(type.Type).Cast<object>()
            .Select(value => JsonSerializer.SerializeToElement(Enum.ToObject(type.Type, value), type))
            .Select(word => word.ValueKind == JsonValueKind.String
                ? word.GetString()!
                : throw new NotSupportedException($"{type.Type} is sent as a number; requests send words.")),
    ];
}
