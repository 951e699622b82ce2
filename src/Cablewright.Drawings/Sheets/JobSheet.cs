using System.Reflection;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace Cablewright.Drawings.Sheets;

/// <summary>The job sheet: an answer as a page to read, to print and to take to the car.</summary>
public static class JobSheet
{
    private static readonly ServiceProvider Nothing = new ServiceCollection().BuildServiceProvider();

    /// <summary>The styles of the sheet, for the page to be served beside it; a sheet has none inside.</summary>
    public static byte[] Styles { get; } = ReadStyles();

    /// <summary>The sheet of an answer.</summary>
    /// <param name="build">The build as it was posted.</param>
    /// <param name="answer">What was answered.</param>
    /// <param name="stylesPath">Where the styles are served.</param>
    /// <param name="shop">The name of the shop that hands it out, if any.</param>
    /// <returns>A whole HTML document.</returns>
    public static async Task<string> Html(Build build, Assessment answer, string stylesPath, string? shop)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(answer);
        await using var renderer = new HtmlRenderer(Nothing, NullLoggerFactory.Instance);
        var parameters = ParameterView.FromDictionary(new Dictionary<string, object?>
        {
            [nameof(Sheet.Build)] = build,
            [nameof(Sheet.Answer)] = answer,
            [nameof(Sheet.StylesPath)] = stylesPath,
            [nameof(Sheet.Shop)] = shop,
        });
        return await renderer.Dispatcher.InvokeAsync(
            async () => (await renderer.RenderComponentAsync<Sheet>(parameters)).ToHtmlString());
    }

    private static byte[] ReadStyles()
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("Sheets/sheet.css")!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
