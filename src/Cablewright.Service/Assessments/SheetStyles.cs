using Cablewright.Drawings.Sheets;
using Cablewright.Service.Answers;

namespace Cablewright.Service.Assessments;

/// <summary>Serves the styles of job sheets, which have none inside so that no page has to allow it.</summary>
internal static class SheetStyles
{
    public const string Path = "/sheet.css";

    private static readonly JsonAnswer Styles =
        new JsonAnswer(default, null, Caching.Shared).As("text/css; charset=utf-8", JobSheet.Styles);

    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet(Path, () => (IResult)Styles).ExcludeFromDescription();
}
