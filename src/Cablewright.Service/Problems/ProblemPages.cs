using System.Net;
using System.Text;
using Cablewright.Service.Json;
using Cablewright.Vocabulary;

namespace Cablewright.Service.Problems;

/// <summary>The page that each problem's <c>type</c> leads to.</summary>
internal static class ProblemPages
{
    /// <summary>The start of their paths.</summary>
    public static readonly PathString Path = new("/docs/problems/");

    /// <summary>Serves them; they are no part of the contract.</summary>
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet(Path + "{code}", Answer).ExcludeFromDescription();

    private static IResult Answer(string code)
    {
        ProblemKind? kind = ProblemKinds.All.FirstOrDefault(candidate => candidate.Code == code);
        return kind is null
            ? ProblemAnswer.NotFound($"There is no kind of problem \"{Excerpt.Of(code)}\".")
            : Results.Content(Page(kind), "text/html; charset=utf-8");
    }

    private static string Page(ProblemKind kind)
    {
        var page = new StringBuilder();
        page.Append("<!doctype html><html lang=\"en\"><meta charset=\"utf-8\">");
        page.Append("<title>").Append(Text(kind.Title)).Append("</title>");
        page.Append("<h1>").Append(Text(kind.Title)).Append("</h1><p>").Append(Text(kind.Meaning)).Append("</p>");
        page.Append($"<p>Status {kind.Status}, code <code>{Text(kind.Code)}</code>.</p>");
        page.Append("<h2>Codes of single faults</h2><dl>");
        foreach (CodeMeaning fault in FaultKinds.All)
            page.Append("<dt><code>").Append(Text(fault.Code)).Append("</code><dd>").Append(Text(fault.Meaning));
        page.Append("</dl><p><a href=\"../\">Documentation</a></p></html>");
        return page.ToString();
    }

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
