using System.Runtime.CompilerServices;

namespace Cablewright.Service.Tests.Support;

/// <summary>Where the committed files are, found from this file's own place.</summary>
public static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "../../.."));

    public static string Contract { get; } = Path.Combine(Root, "openapi/cablewright.v1.json");

    public static string Examples { get; } = Path.Combine(Root, "openapi/examples");

    public static string CompleteBuild { get; } = Path.Combine(Here(), "complete-build.json");

    private static string Here([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}
