using System.Text.Json;
using System.Text.Json.Nodes;
using Cablewright.Contract;
using Cablewright.Contract.Builds;
using Cablewright.Contract.Kits;
using Cablewright.Service.Quantities;
using Cablewright.Service.Tests.Support;
using Cablewright.Service.Validation;
using Cablewright.Vocabulary;
using FluentValidation;

namespace Cablewright.Service.Tests.Validation;

/// <summary>Whatever stands in a request is checked by the validator of its type, without being named for it.</summary>
public class ValidatorTests
{
    private static readonly KitPart Lead = new() { Kind = KitPartKind.TurnOnLead, Price = 1 };

    [Fact]
    public void Every_validator_that_is_written_is_the_one_of_its_type() => Assert.All(
        typeof(Validators).Assembly.GetTypes().Where(type => type is { IsAbstract: false, IsGenericTypeDefinition: false }),
        type =>
        {
            if (ValidatedBy(type) is { } validated) Assert.IsType(type, Validators.Of(validated));
        });

    /// <summary>Quantities stand in every type of a build.</summary>
    [Fact]
    public void Every_quantity_of_a_build_is_checked_at_its_place()
    {
        string[] quantities =
        [
            .. CompleteBuild.Leaves().Where(leaf => QuantityRule.Of(leaf.Member) is not null).Select(leaf => leaf.Pointer),
        ];
        JsonNode build = CompleteBuild.Json;
        foreach (string pointer in quantities) Replace(build, pointer, "1 parsec");
        Build read = build.Deserialize(ContractJson.Default.Build)!;
        Assert.Equal(
            quantities.Order(),
            Validators.FaultsOf(read)
                .Where(fault => fault.Code.StartsWith("quantity.", StringComparison.Ordinal))
                .Select(fault => fault.Pointer)
                .Order());
    }

    [Fact]
    public void Rules_of_the_whole_come_after_what_is_nested_where_they_say_so() => Assert.Equal(
        ["/parts/0/length", "/currency"],
        Pointers(new Kit { Name = "kit", Parts = [Lead with { Length = "1 parsec" }] }));

    [Fact]
    public void Rules_of_the_whole_come_before_what_is_nested_elsewhere() => Assert.Equal(
        ["/ruleset", "/limits/maxDrop"],
        Pointers(new Build
        {
            Ruleset = "none",
            Limits = new Limits { MaxDrop = "1 parsec" },
            Amplifiers = [new Amplifier { Id = "amplifier", RatedOutput = "1 kW" }],
            Runs = [new Run { Id = "run", From = "battery", To = "amplifier", Length = "1 m" }],
        }));

    [Fact]
    public void A_build_in_another_request_is_left_to_what_checks_its_circuit_too() => Assert.Equal(
        ["/kit/parts/0/length", "/kit/currency"],
        Pointers(new KitCheck
        {
            Build = new Build { Ruleset = "none", Amplifiers = [], Runs = [] },
            Kit = new Kit { Name = "kit", Parts = [Lead with { Length = "1 parsec" }] },
        }));

    private static IEnumerable<string> Pointers<T>(T instance) where T : class =>
        Validators.FaultsOf(instance).Select(fault => fault.Pointer);

    /// <summary>What a class checks, whichever of the library's classes it derives from.</summary>
    private static Type? ValidatedBy(Type type)
    {
        for (Type? parent = type.BaseType; parent is not null; parent = parent.BaseType)
        {
            if (parent.IsGenericType && parent.GetGenericTypeDefinition() == typeof(AbstractValidator<>))
                return parent.GenericTypeArguments[0];
        }

        return null;
    }

    private static void Replace(JsonNode root, string pointer, string text)
    {
        string[] parts = pointer.Split('/')[1..];
        JsonNode at = parts[..^1].Aggregate(root, (node, part) => node is JsonArray list ? list[int.Parse(part)]! : node[part]!);
        at[parts[^1]] = text;
    }
}
