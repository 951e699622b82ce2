using Cablewright.Service.Tests.Support;
using System.Text.RegularExpressions;

namespace Cablewright.Service.Tests.Architecture;

/// <summary>The engine's folders lie in layers, and each uses only those of the layers below its own.</summary>
/// <remarks>Read from the sources: the build refuses a directive that is not needed, so the directives are what a file
/// uses.</remarks>
public partial class LayerTests
{
    private static readonly string Engine = Path.Combine(Repository.Root, "src/Cablewright.Engine");

    /// <summary>From the ground up. The folders of one line do not use each other.</summary>
    private static readonly string[][] Layers =
    [
        ["Numerics", "Data"],
        ["Network", "Conductors", "Fuses", "Text"],
        ["Rulesets"],
        ["Builds", "Heat", "Loads"],
        ["Sources", "Reference", "Rules"],
        ["Completion"],
        ["Wiring"],
        ["Protection"],
        ["DesignRules"],
        ["Evaluation"],
        ["ShortCircuits", "Supply"],
        ["Sizing"],
        ["Designs", "Audits"],
        ["Materials", "Variations", "Changes"],
        ["Kits"],
        [""],
    ];

    private static readonly Dictionary<string, int> LayerOf = Layers
        .SelectMany((folders, layer) => folders.Select(folder => (folder, layer)))
        .ToDictionary(each => each.folder, each => each.layer);

    [Fact]
    public void Every_folder_of_the_engine_lies_in_a_layer() => Assert.Equal(
        LayerOf.Keys.Order(StringComparer.Ordinal),
        Files().Select(file => FolderOf(file)).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void A_folder_uses_only_those_of_lower_layers()
    {
        string[] upwards =
        [
            .. Files().SelectMany(file => Used(File.ReadAllText(file)).Where(used => used != FolderOf(file))
                .Where(used => LayerOf[used] >= LayerOf[FolderOf(file)])
                .Select(used => $"{Path.GetRelativePath(Engine, file)} uses {used}")),
        ];
        Assert.Empty(upwards);
    }

    /// <summary>A file says its own folder, since it could otherwise use another without a directive.</summary>
    [Fact]
    public void A_namespace_is_its_folder() => Assert.All(Files(), file =>
    {
        string folder = FolderOf(file);
        Assert.Contains(
            $"\nnamespace Cablewright.Engine{(folder.Length > 0 ? "." : "")}{folder};\n", "\n" + File.ReadAllText(file));
    });

    private static IEnumerable<string> Used(string source)
    {
        string code = Comment().Replace(source, "");
        return Directive().Matches(code).Select(match => match.Groups[1].Value)
            .Concat(Qualified().Matches(code).Select(match => match.Groups[1].Value).Where(LayerOf.ContainsKey));
    }

    private static string FolderOf(string file) =>
        Path.GetRelativePath(Engine, file).Split(Path.DirectorySeparatorChar) is [string folder, _] ? folder : "";

    private static IEnumerable<string> Files() =>
        SourceFiles.Under(Engine).Where(file => file.EndsWith(".cs", StringComparison.Ordinal));

    [GeneratedRegex(@"^using (?:static )?(?:\w+ = )?Cablewright\.Engine\.(\w+)", RegexOptions.Multiline)]
    private static partial Regex Directive();

    /// <summary>A type named by its folder, as in <c>Results.Edit edit</c>.</summary>
    [GeneratedRegex(@"(?<![\w.])([A-Z]\w+)\.[A-Z]\w+(?:\.[A-Z]| [a-z])")]
    private static partial Regex Qualified();

    [GeneratedRegex(@"^\s*//.*$", RegexOptions.Multiline)]
    private static partial Regex Comment();
}
