using System.Text.RegularExpressions;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Architecture;

/// <summary>What the documents of the repository name is there.</summary>
public partial class DocumentTests
{
    private static readonly string[] Documents =
        [.. SourceFiles.Under(Repository.Root).Where(file => file.EndsWith(".md", StringComparison.Ordinal))];

    private static readonly string[] Folders =
        [.. Directory.EnumerateDirectories(Repository.Root).Select(folder => Path.GetFileName(folder))];

    [Fact]
    public void Every_relative_link_leads_to_a_file() => Assert.Empty(
        from document in Documents
        from Match link in Link().Matches(Prose(document))
        let target = link.Groups[1].Value.Split('#')[0]
        where target.Length > 0 && !target.Contains("://", StringComparison.Ordinal)
        where !Path.Exists(Path.Combine(Path.GetDirectoryName(document)!, target))
        select Told(document, target));

    [Fact]
    public void Every_path_in_backticks_exists() => Assert.Empty(
        from document in Documents
        from Match quoted in Quoted().Matches(Prose(document))
        from word in quoted.Groups[1].Value.Split(' ')
        where IsPath(word) && !Exists(document, word)
        select Told(document, word));

    /// <summary>A path begins at a folder of the repository's top, or ends like a file that is kept in it.</summary>
    [Theory]
    [InlineData("src/Cablewright.Engine", true)]
    [InlineData("tests/run", true)]
    [InlineData("Ampacity.cs", true)]
    [InlineData("Heat/HeatBalanceTests.cs", true)]
    [InlineData("/v1/assessments", false)]
    [InlineData("application/problem+json", false)]
    [InlineData("http://127.0.0.1:5080/docs", false)]
    [InlineData("4/0", false)]
    [InlineData("LayerTests", false)]
    public void A_path_is_told_from_other_words(string word, bool isPath) => Assert.Equal(isPath, IsPath(word));

    [Fact]
    public void Documents_are_found() => Assert.Contains(Path.Combine(Repository.Root, "DEVELOPERS.md"), Documents);

    private static bool IsPath(string word) =>
        PathLike().IsMatch(word) && (FileEnding().IsMatch(word) || (word.Contains('/') && Folders.Contains(word.Split('/')[0])));

    /// <summary>A path starts beside the document or in a folder above it.</summary>
    private static bool Exists(string document, string path)
    {
        for (string? folder = Path.GetDirectoryName(document); folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (Path.Exists(Path.Combine(folder, path))) return true;
            if (folder == Repository.Root) return false;
        }

        return false;
    }

    private static string Prose(string document) => Fenced().Replace(File.ReadAllText(document), "");

    private static string Told(string document, string target) => $"{Path.GetRelativePath(Repository.Root, document)}: {target}";

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"`([^`\n]+)`")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"^```.*?^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fenced();

    [GeneratedRegex(@"^[\w.-]+(/[\w.-]+)*/?$")]
    private static partial Regex PathLike();

    [GeneratedRegex(@"\w\.(cs|csproj|csv|json|md|props|slnx|ts|ya?ml)$")]
    private static partial Regex FileEnding();
}
