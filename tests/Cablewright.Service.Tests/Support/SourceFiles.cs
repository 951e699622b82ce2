namespace Cablewright.Service.Tests.Support;

/// <summary>The files of the repository that someone wrote.</summary>
public static class SourceFiles
{
    private static readonly string[] Made = [".git", "artifacts", "bin", "node_modules", "obj", "TestResults"];

    /// <summary>Every file in a folder and below it, without what builds and tests leave behind.</summary>
    public static IEnumerable<string> Under(string folder) => Directory.EnumerateFiles(folder)
        .Concat(Directory.EnumerateDirectories(folder)
            .Where(below => !Made.Contains(Path.GetFileName(below)))
            .SelectMany(Under));
}
