using Cablewright.Engine.Text;

namespace Cablewright.Service.Json;

/// <summary>Finds the name that was probably meant.</summary>
internal static class Nearest
{
    /// <summary>The sentence that asks for it, or nothing.</summary>
    public static string Hint(string given, IEnumerable<string> known) =>
        NearestWord.Of(given, known) is { } meant ? $"; did you mean \"{meant}\"?" : "";
}
