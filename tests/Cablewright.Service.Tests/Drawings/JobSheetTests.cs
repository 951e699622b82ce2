using System.Net;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Drawings.Sheets;
using Cablewright.Service.Tests.Examples;
using Cablewright.Service.Tests.Judgement;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Drawings;

/// <summary>The job sheet says all that the answer says, and nothing on it is anything but text.</summary>
public class JobSheetTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    public static TheoryData<string> Names => [.. ExampleFiles.Names];

    public static TheoryData<string> Jobs => PanelTests.Jobs;

    [Theory]
    [MemberData(nameof(Names))]
    public async Task An_example_has_everything_on_its_sheet(string name) =>
        await HasEverything("example-" + name, ExampleFiles.Request(name));

    [Theory]
    [MemberData(nameof(Jobs))]
    public async Task A_job_of_the_panel_too(string name) => await HasEverything("job-" + name, await PanelTests.BuildOf(name));

    [Theory]
    [MemberData(nameof(HostileNameTests.Hostile), MemberType = typeof(HostileNameTests))]
    public async Task A_name_stays_text(string name)
    {
        (Build build, Assessment answer) = (await service.To(Builds.Small))!.Value;
        string plain = await JobSheet.Html(build, answer, "/sheet.css", null);
        string html = await JobSheet.Html(build with { Name = name }, answer, "/sheet.css", name);
        string[] hostile = ["<script", "<img"];
        Assert.All(hostile, word => Assert.DoesNotContain(word, html));
        Assert.DoesNotMatch("<[a-z]+[^<>]* on[a-z]+=", html);
        Assert.Equal(Count(plain, "<section"), Count(html, "<section"));
        Assert.DoesNotContain(html, letter => char.IsControl(letter) && letter is not '\n' and not '\r');
    }

    [Fact]
    public async Task Headings_go_down_by_one_and_tables_have_heads()
    {
        (Build build, Assessment answer) = (await service.To(ExampleFiles.Request("two-amplifiers")))!.Value;
        string html = await JobSheet.Html(build, answer, "/sheet.css", null);
        Assert.Equal(1, Count(html, "<h1>"));
        Assert.Equal(Count(html, "<table>"), Count(html, "<thead>"));
        Assert.Contains("<html lang=\"en\">", html);
        Assert.Contains("name=\"viewport\"", html);
    }

    private async Task HasEverything(string name, string body)
    {
        (Build build, Assessment answer) = (await service.To(body))!.Value;
        string html = await JobSheet.Html(build, answer, "sheet.css", null);
        await Pictures.Keep(name + ".html", html);
        string text = WebUtility.HtmlDecode(html);
        string[] said =
        [
            answer.Summary, answer.Id, answer.Ruleset, .. answer.SafetyNotes,
            .. answer.Findings.Select(finding => finding.Message),
            .. answer.Findings.Where(finding => finding.Severity != Vocabulary.Severity.Info)
                .SelectMany(finding => new[] { finding.Remedy, finding.Workings, finding.Source }),
            .. answer.AskNext.Select(question => question.Question), .. answer.Assumptions.Select(assumed => assumed.Reason),
            .. answer.Materials.Select(line => line.ItemName), .. answer.Runs.Select(run => run.Id),
        ];
        Assert.All(said, words => Assert.Contains(words, text, StringComparison.Ordinal));
        Assert.Contains("<svg", html);
    }

    private static int Count(string text, string part) => text.Split(part).Length - 1;
}
