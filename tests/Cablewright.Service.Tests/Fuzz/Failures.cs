using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>What went wrong over all cases: each kind of failure once, with the first case that shows it.</summary>
internal sealed partial class Failures
{
    private const int MostTold = 20;

    private readonly ConcurrentDictionary<string, Failure> kinds = new(StringComparer.Ordinal);

    /// <summary>A failure as others of its kind are written: places, names and figures left out.</summary>
    public static string KindOf(string trouble) => Particular().Replace(trouble.Split('\n')[0], "*");

    /// <summary>Notes the failure of a case; the body of the first of its kind is kept as a file at once.</summary>
    /// <param name="number">The case's number.</param>
    /// <param name="trouble">What went wrong.</param>
    /// <param name="body">What was sent.</param>
    public void Add(int number, string trouble, string body)
    {
        if (kinds.TryAdd(KindOf(trouble), new Failure(number, trouble, body, 0)))
            FuzzFiles.Keep($"failed-{FuzzRun.Seed}-{number}-{kinds.Count}", body + Environment.NewLine + trouble);
        kinds.AddOrUpdate(
            KindOf(trouble),
            _ => new Failure(number, trouble, body, 1),
            (_, known) => (body.Length < known.Body.Length ? new Failure(number, trouble, body, known.Count) : known) with
            {
                Count = known.Count + 1,
            });
    }

    /// <summary>Fails where there was any failure, and tells how to try each again; the bodies are kept as files too.</summary>
    /// <param name="shrink">Makes the body of a failure smaller while it fails likewise.</param>
    public async Task AssertNone(Func<string, string, Task<string>> shrink)
    {
        if (kinds.IsEmpty) return;
        var told = new StringBuilder().AppendLine(CultureInfo.InvariantCulture, $"{kinds.Count} kinds of failure:");
        foreach (Failure failure in kinds.Values.OrderByDescending(failure => failure.Count).Take(MostTold))
        {
            string body = await shrink(failure.Body, failure.Trouble);
            told.AppendLine(CultureInfo.InvariantCulture, $"{failure.Count} x {failure.Trouble}")
                .AppendLine(CultureInfo.InvariantCulture, $"  again: {FuzzRun.Again(failure.Number)}")
                .AppendLine(CultureInfo.InvariantCulture, $"  body: {body}");
        }

        Assert.Fail(told.ToString());
    }

    [GeneratedRegex("/[0-9]+|[0-9][0-9.,eE+-]*|\"[^\"]*\"")]
    private static partial Regex Particular();

    private sealed record Failure(int Number, string Trouble, string Body, int Count);
}

/// <summary>Files that tell of the cases, so that one which ends the process can be tried again.</summary>
internal static class FuzzFiles
{
    private static readonly string Folder = Directory.CreateDirectory(Path.Combine(Repository.Root, "artifacts/fuzz")).FullName;

    /// <summary>Keeps a body as a file.</summary>
    public static void Keep(string name, string body) => File.WriteAllText(PathOf(name), body);

    /// <summary>Does something with a body, which stays as a file if the process does not live through it.</summary>
    public static async Task<T> Whilst<T>(string name, string body, Func<Task<T>> action)
    {
        Keep(name, body);
        T result = await action();
        File.Delete(PathOf(name));
        return result;
    }

    private static string PathOf(string name) => Path.Combine(Folder, name + ".json");
}
