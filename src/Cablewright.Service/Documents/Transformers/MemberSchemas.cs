using System.Reflection;
using System.Text.Json.Nodes;
using Cablewright.Contract;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Quantities;
using Cablewright.Contract.Schema;
using Cablewright.Service.Quantities;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Cablewright.Service.Documents.Transformers;

/// <summary>Writes into each member's schema what its attributes state: range, unit, pattern, counts and an example.</summary>
internal sealed class MemberSchemas : IOpenApiSchemaTransformer
{
    /// <inheritdoc/>
    public Task TransformAsync(OpenApiSchema schema, OpenApiSchemaTransformerContext context, CancellationToken cancellationToken)
    {
        if (context.JsonPropertyInfo?.AttributeProvider is PropertyInfo member) Describe(schema, member);
        return Task.CompletedTask;
    }

    /// <summary>Describes a member, or for a list each of its items where the attribute speaks of them.</summary>
    public static void Describe(OpenApiSchema schema, PropertyInfo member)
    {
        OpenApiSchema item = schema.Items as OpenApiSchema ?? schema;
        if (member.PropertyType == typeof(IReadOnlyDictionary<string, Param>)) schema.AdditionalProperties = AnyParam();
        if (QuantityRule.Of(member) is { } rule) DescribeQuantity(schema, member, rule);
        foreach (Attribute stated in member.GetCustomAttributes())
        {
            switch (stated)
            {
                case FigureAttribute figure: DescribeFigure(item, figure, IsWhole(member)); break;
                case ConductorSizeAttribute:
                    DescribeText(item, ConductorSizeAttribute.Example, ConductorSizeAttribute.Pattern);
                    break;
                case IdentifierAttribute id: DescribeText(item, id.Example, ContractLimits.IdPattern); break;
                case CurrencyAttribute: DescribeText(item, CurrencyAttribute.Example, CurrencyAttribute.Pattern, 3); break;
                case TextAttribute text: DescribeText(item, text.Example, null, text.Longest); break;
                case ExampleAttribute example: DescribeExample(item, example); break;
                case ItemsAttribute items: (schema.MinItems, schema.MaxItems) = (items.Fewest, items.Most); break;
            }
        }
    }

    /// <summary>A value of a sentence writes itself, so that its type says nothing of its shape.</summary>
    private static OpenApiSchema AnyParam() =>
        new() { Type = JsonSchemaType.Number | JsonSchemaType.String | JsonSchemaType.Array | JsonSchemaType.Object };

    private static bool IsWhole(PropertyInfo member) =>
        Type.GetTypeCode(Nullable.GetUnderlyingType(member.PropertyType) ?? member.PropertyType)
            is TypeCode.Int32 or TypeCode.Int64;

    private static void DescribeFigure(OpenApiSchema schema, FigureAttribute figure, bool isWhole)
    {
        schema.Examples = [isWhole ? (int)figure.Example : figure.Example];
        schema.Format = null;
        if (double.IsFinite(figure.Smallest)) schema.Minimum = Invariant(figure.Smallest);
        if (double.IsFinite(figure.Largest)) schema.Maximum = Invariant(figure.Largest);
        schema.Extensions ??= new Dictionary<string, IOpenApiExtension>();
        schema.Extensions["x-unit"] = new JsonNodeExtension(figure.Unit);
    }

    private static void DescribeText(
        OpenApiSchema schema, string example, string? pattern, int longest = ContractLimits.QuantityLength)
    {
        schema.Examples = [example];
        schema.Pattern = pattern;
        schema.MaxLength = longest;
    }

    private static void DescribeExample(OpenApiSchema schema, ExampleAttribute example)
    {
        schema.Examples =
            [example.IsJson ? JsonNode.Parse((string)example.Value)! : JsonValue.Create(example.Value)!];
        schema.Pattern = example.Pattern;
    }

    private static void DescribeQuantity(OpenApiSchema schema, PropertyInfo member, QuantityRule rule)
    {
        QuantityAttribute[] ranges = [.. member.GetCustomAttributes<QuantityAttribute>()];
        DescribeText(schema, ranges[0].Example, QuantityPattern.Of(ranges.Select(range => range.Kind)));
        schema.Description = $"{schema.Description} Text with a unit, {rule.Accepted}.".TrimStart();
    }

    private static string Invariant(double number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
