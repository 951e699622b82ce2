using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Architecture;

/// <summary>A line of a source fits beside another on a screen. The formatter does not look at that.</summary>
public class LineWidthTests
{
    private const int Widest = 130;

    private static readonly string[] Sources =
    [
        .. SourceFiles.Under(Path.Combine(Repository.Root, "src")), .. SourceFiles.Under(Path.Combine(Repository.Root, "tests")),
    ];

    [Fact]
    public void No_line_of_a_source_is_wider_than_130_characters() => Assert.Empty(
        from file in Sources
        where file.EndsWith(".cs", StringComparison.Ordinal) && !file.Contains("Migrations", StringComparison.Ordinal)
        from line in File.ReadLines(file).Index()
        where line.Item.Length > Widest
        select $"{Path.GetRelativePath(Repository.Root, file)}:{line.Index + 1} has {line.Item.Length}");
}
