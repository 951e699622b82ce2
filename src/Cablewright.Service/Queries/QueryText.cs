using Cablewright.Service.Json;
using Cablewright.Service.Problems;
using Microsoft.AspNetCore.WebUtilities;

namespace Cablewright.Service.Queries;

/// <summary>Reads a query string strictly: each parameter known, and at most once.</summary>
internal static class QueryText
{
    /// <summary>The values by name, and what is wrong with the query.</summary>
    public static (Dictionary<string, string> Values, List<Fault> Faults) Read(QueryString query, string[] names)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal);
        var faults = new List<Fault>();
        foreach (QueryStringEnumerable.EncodedNameValuePair pair in new QueryStringEnumerable(query.Value))
        {
            string name = pair.DecodeName().ToString(), value = pair.DecodeValue().ToString();
            if (!names.Contains(name)) faults.Add(Unknown(name, value, names));
            else if (!values.TryAdd(name, value)) faults.Add(Repeated(name, value));
        }

        return (values, faults);
    }

    /// <summary>Where a parameter's faults point.</summary>
    public static string PointerOf(string name) => "/" + name.Replace("~", "~0").Replace("/", "~1");

    private static Fault Unknown(string name, string value, string[] names)
    {
        string shown = Excerpt.Of(name);
        return new Fault(
            PointerOf(shown),
            QueryCodes.Unknown,
            $"\"{shown}\" is not a parameter of this call{Nearest.Hint(name, names)}",
            Excerpt.Of(value),
            names.Length == 0 ? "none" : string.Join(", ", names));
    }

    private static Fault Repeated(string name, string value) =>
        new(PointerOf(name), QueryCodes.Repeated, $"\"{name}\" is given more than once", Excerpt.Of(value), "each once");
}
