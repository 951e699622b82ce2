using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Json;

/// <summary>One pass over a body: where it stands, and what it has found wrong.</summary>
/// <param name="most">How many faults to list; one more ends the walk, so that a hostile body costs little.</param>
/// <param name="readsQuantities">Whether the texts of quantities are read too; otherwise that is left to the validators.</param>
internal sealed class Walk(int most, bool readsQuantities)
{
    private readonly List<(string? Name, int Index)> path = [];
    private readonly List<Fault> listed = [];

    public bool ReadsQuantities => readsQuantities;

    /// <summary>More was found than is to be listed: there is no use in walking on.</summary>
    public bool IsOver { get; private set; }

    /// <summary>Everything found, in order; at the end a word on what is not listed.</summary>
    public IReadOnlyList<Fault> Faults =>
        IsOver ? [.. listed, Fault.More(most)] : listed;

    public void Enter(string member) => path.Add((member, 0));

    public void Enter(int item) => path.Add((null, item));

    public void Leave() => path.RemoveAt(path.Count - 1);

    public void Add(string code, string detail, JsonNode? value = null, string? accepted = null)
    {
        if (listed.Count == most) IsOver = true;
        else listed.Add(new Fault(Pointer(), code, detail, value, accepted));
    }

    private string Pointer()
    {
        StringBuilder pointer = new();
        foreach ((string? name, int index) in path)
        {
            pointer.Append('/');
            if (name is null) pointer.Append(CultureInfo.InvariantCulture, $"{index}");
            else pointer.Append(name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal));
        }

        return pointer.ToString();
    }
}
