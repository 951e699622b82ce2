using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>Objects of the contract with whatever of their plain members chance states.</summary>
internal sealed class RandomMembers(Dice dice, Temper temper)
{
    private readonly RandomValues values = new(dice, temper);

    /// <summary>An object in which the required plain members are stated, and some of the others.</summary>
    /// <param name="always">The names of more members to state.</param>
    public JsonObject Of<T>(params string[] always)
    {
        var stated = new JsonObject();
        foreach (PropertyInfo member in typeof(T).GetProperties())
        {
            string name = JsonNamingPolicy.CamelCase.ConvertName(member.Name);
            bool isDue = member.GetCustomAttribute<RequiredMemberAttribute>() is not null || always.Contains(name);
            if ((isDue || dice.Chance(temper.Stated)) && values.Of(member) is { } value) stated[name] = value;
        }

        return stated;
    }

    /// <summary>A list of what is made of each of several things.</summary>
    public static JsonArray List<T>(IEnumerable<T> things, Func<T, JsonNode> item) => [.. things.Select(item)];
}
