using System.Globalization;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Where the JSON pointers of an answer lead.</summary>
internal static class Pointers
{
    /// <summary>
    /// Whether a pointer leads to something that a document states, or to a member that its type has and that is left out there.
    /// </summary>
    /// <param name="pointer">The pointer.</param>
    /// <param name="document">What was sent.</param>
    /// <param name="type">Its type in the contract.</param>
    public static bool Leads(string pointer, JsonNode? document, Type type)
    {
        if (pointer.Length > 0 && pointer[0] != '/') return false;
        JsonNode? at = document;
        foreach (string step in pointer.Split('/').Skip(1))
        {
            if (ItemOf(type) is { } item)
            {
                // An empty list stands for one assumed item, as an absent one does; the place after the last is written "-".
                JsonArray list = at is JsonArray { Count: > 0 } items ? items : [null];
                int index = 0;
                if (step != "-" && !int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out index)) return false;
                if (index >= list.Count) return false;
                (at, type) = (step == "-" ? null : list[index], item);
            }
            else
            {
                if (MemberOf(type, step) is not { } member) return false;
                (at, type) = ((at as JsonObject)?[step], member.PropertyType);
            }
        }

        return true;
    }

    /// <summary>Every pointer in an answer.</summary>
    public static IEnumerable<string> In(JsonNode answer) => JsonParts.Below(answer)
        .Where(node => node.Parent is JsonObject && node.GetPropertyName() == "pointer")
        .Select(node => (string)node!);

    /// <summary>The member that a JSON name stands for.</summary>
    public static PropertyInfo? MemberOf(Type type, string name) =>
        type.GetProperties().FirstOrDefault(property => JsonNamingPolicy.CamelCase.ConvertName(property.Name) == name);

    private static Type? ItemOf(Type type) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) ? type.GetGenericArguments()[0] : null;
}
