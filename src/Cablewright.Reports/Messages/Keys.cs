using System.Text.Json;

namespace Cablewright.Reports.Messages;

/// <summary>Keys of the catalogue.</summary>
internal static class Keys
{
    /// <summary>A member of an enumeration as a key writes it, such as <c>own-fuse-alone</c>.</summary>
    public static string Of(Enum member) => OfName(member.ToString());

    /// <summary>A name likewise.</summary>
    public static string OfName(string name) => JsonNamingPolicy.KebabCaseLower.ConvertName(name);
}
