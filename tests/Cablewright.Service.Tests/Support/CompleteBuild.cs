using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using Cablewright.Contract.Builds;

namespace Cablewright.Service.Tests.Support;

/// <summary>A build that states every member of the contract, and a walk over what it states.</summary>
public static class CompleteBuild
{
    /// <summary>With an alternator and a converter both, which only the shape allows.</summary>
    public static JsonNode Json => JsonNode.Parse(File.ReadAllText(Repository.CompleteBuild))!;

    /// <summary>Charged by its alternator alone.</summary>
    public static JsonNode WithAlternator
    {
        get
        {
            JsonNode build = Json;
            build["vehicle"]!.AsObject().Remove("converter");
            return build;
        }
    }

    /// <summary>Charged by its converter alone.</summary>
    public static JsonNode WithConverter
    {
        get
        {
            JsonNode build = Json;
            build["vehicle"]!.AsObject().Remove("alternator");
            build["vehicle"]!["converter"]!.AsObject().Remove("ratedPower");
            return build;
        }
    }

    /// <summary>Every value that it states, with its pointer and the member that holds it, lists by their items.</summary>
    public static IEnumerable<(string Pointer, PropertyInfo Member)> Leaves() => Leaves(Json, "", typeof(Build), null);

    private static IEnumerable<(string, PropertyInfo)> Leaves(JsonNode node, string at, Type type, PropertyInfo? member) =>
        node switch
        {
            JsonObject whole => whole.SelectMany(
                stated => Leaves(stated.Value!, $"{at}/{stated.Key}", MemberOf(type, stated.Key))),
            JsonArray list => list.SelectMany(
                (item, index) => Leaves(item!, $"{at}/{index}", type.GetGenericArguments()[0], member)),
            _ => [(at, member!)],
        };

    private static IEnumerable<(string, PropertyInfo)> Leaves(JsonNode node, string at, PropertyInfo member) =>
        Leaves(node, at, member.PropertyType, member);

    private static PropertyInfo MemberOf(Type type, string name) =>
        type.GetProperties().Single(property => JsonNamingPolicy.CamelCase.ConvertName(property.Name) == name);
}
