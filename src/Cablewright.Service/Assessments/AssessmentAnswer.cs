using System.Text;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Drawings.Sheets;
using Cablewright.Drawings.Wiring;
using Cablewright.Service.Answers;

namespace Cablewright.Service.Assessments;

/// <summary>An assessment in the form that the caller wants: as JSON, as a wiring drawing or as a job sheet.</summary>
internal static class AssessmentAnswer
{
    /// <summary>Where the setting is that says whose name stands on job sheets.</summary>
    private const string ShopSetting = "Cablewright:SheetShop";

    /// <summary>The answer; drawing and sheet are of the very assessment that JSON would say.</summary>
    /// <param name="context">The call.</param>
    /// <param name="build">The build as it was posted.</param>
    /// <param name="assessment">Its assessment.</param>
    /// <param name="json">The answer as JSON.</param>
    public static async Task<JsonAnswer> Of(HttpContext context, Build build, Assessment assessment, JsonAnswer json)
    {
        string form = AnswerForms.WantedBy(context.Request);
        return form switch
        {
            AnswerForms.Drawing => json.As(form, Utf8(WiringDrawing.Svg(build, assessment))),
            AnswerForms.Sheet => json.As(form + "; charset=utf-8", Utf8(await Sheet(context, build, assessment))),
            _ => json,
        };
    }

    private static Task<string> Sheet(HttpContext context, Build build, Assessment assessment) => JobSheet.Html(
        build,
        assessment,
        context.Request.PathBase + SheetStyles.Path,
        context.RequestServices.GetRequiredService<IConfiguration>()[ShopSetting]);

    private static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);
}
