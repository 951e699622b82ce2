using System.Collections.Frozen;
using System.Text.Json;

namespace Cablewright.Service.Json;

/// <summary>One member that an object may have.</summary>
/// <param name="Name">Its name.</param>
/// <param name="IsRequired">Whether it must be there.</param>
/// <param name="CanBeNull">Whether <c>null</c> says the same as leaving it out.</param>
/// <param name="Shape">What it must look like.</param>
/// <param name="Ordinal">Its place among the members.</param>
internal sealed record Member(string Name, bool IsRequired, bool CanBeNull, Shape Shape, int Ordinal);

/// <summary>An object whose members are all known.</summary>
internal sealed class ObjectShape(IReadOnlyList<Member> members) : Shape("an object", JsonValueKind.Object)
{
    private readonly FrozenDictionary<string, Member> byName = members.ToFrozenDictionary(member => member.Name);
    private readonly string names = string.Join(", ", members.Select(member => member.Name));

    protected override void CheckContent(JsonElement value, Walk walk)
    {
        Span<bool> seen = stackalloc bool[members.Count];
        foreach (JsonProperty sent in value.EnumerateObject())
        {
            if (walk.IsOver) return;
            string name = JsonText.Name(sent);
            if (byName.TryGetValue(name, out Member? member)) CheckMember(member, sent.Value, ref seen[member.Ordinal], walk);
            else Unknown(name, sent.Value, walk);
        }

        foreach (Member member in members)
        {
            if (member.IsRequired && !seen[member.Ordinal]) Missing(member, walk);
        }
    }

    private static void Missing(Member member, Walk walk)
    {
        string detail = $"\"{member.Name}\" is missing; expected {member.Shape.Expected}";
        walk.Enter(member.Name);
        walk.Add(ShapeCodes.MissingMember, detail, null, member.Shape.Accepted);
        walk.Leave();
    }

    private static void CheckMember(Member member, JsonElement value, ref bool seen, Walk walk)
    {
        walk.Enter(member.Name);
        if (seen)
            walk.Add(ShapeCodes.DuplicateMember, $"\"{member.Name}\" is given more than once; keep one", Excerpt.Of(value));
        else if (value.ValueKind != JsonValueKind.Null || !member.CanBeNull)
            member.Shape.Check(value, walk);
        seen = true;
        walk.Leave();
    }

    private void Unknown(string name, JsonElement value, Walk walk)
    {
        string shown = Excerpt.Of(name);
        string detail = $"\"{shown}\" is not a member here{Nearest.Hint(name, byName.Keys)}";
        walk.Enter(shown);
        walk.Add(ShapeCodes.UnknownMember, detail, Excerpt.Of(value), names);
        walk.Leave();
    }
}
