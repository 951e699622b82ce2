using System.Text;
using System.Text.Json;

namespace Cablewright.Service.Validation;

/// <summary>Turns FluentValidation's paths into JSON pointers (RFC 6901).</summary>
internal static class MemberPath
{
    /// <summary><c>Runs[0].Length</c> becomes <c>/runs/0/length</c>.</summary>
    public static string ToPointer(string path)
    {
        var pointer = new StringBuilder();
        foreach (string part in path.Split(['.', '[', ']'], StringSplitOptions.RemoveEmptyEntries))
            pointer.Append('/').Append(JsonNamingPolicy.CamelCase.ConvertName(part));
        return pointer.ToString();
    }
}
