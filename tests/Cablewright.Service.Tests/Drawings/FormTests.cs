using System.Xml.Linq;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Drawings;

/// <summary>An assessment comes in the form that the caller accepts (RFC 9110, 12.5.1).</summary>
public class FormTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private const string Quick = "/v1/assessments/quick?ratedOutput=1000%20W&length=16%20ft";
    private const string Json = "application/json";
    private const string Drawing = "image/svg+xml";
    private const string Sheet = "text/html; charset=utf-8";

    [Theory]
    [InlineData("", Json)]
    [InlineData("*/*", Json)]
    [InlineData("application/*", Json)]
    [InlineData("APPLICATION/JSON", Json)]
    [InlineData("image/svg+xml", Drawing)]
    [InlineData("image/*", Drawing)]
    [InlineData("application/json;q=0, */*", Drawing)]
    [InlineData("text/html", Sheet)]
    [InlineData("text/html, application/json;q=0.5", Sheet)]
    [InlineData("application/json, text/html;q=0.5", Json)]
    [InlineData("text/html,application/xhtml+xml,application/xml;q=0.9,image/webp,*/*;q=0.8", Sheet)]
    public async Task It_is_the_one_that_is_wanted_most(string accept, string form)
    {
        foreach (Answer answer in new[]
        {
            await service.Post(Builds.Small, headers: ("Accept", accept)), await service.Get(Quick, ("Accept", accept)),
        })
        {
            Assert.Equal((200, form), (answer.Status, answer.ContentType));
            Assert.Contains("Accept", answer.Headers["Vary"].Split(", "));
            if (form == Drawing) Assert.Equal("svg", XElement.Parse(answer.Text).Name.LocalName);
            if (form == Sheet) Assert.StartsWith("<!DOCTYPE html>", answer.Text, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("image/png")]
    [InlineData("text/plain")]
    [InlineData("application/json;q=0, text/html;q=0, image/svg+xml;q=0")]
    [InlineData("not a media type")]
    public async Task Another_one_is_refused(string accept)
    {
        ProblemAssertions.IsProblem(
            await service.Post(Builds.Small, headers: ("Accept", accept)), 406, "answer.not-acceptable");
        ProblemAssertions.IsProblem(await service.Get(Quick, ("Accept", accept)), 406, "answer.not-acceptable");
    }

    [Theory]
    [InlineData(Json)]
    [InlineData("image/svg+xml")]
    [InlineData("text/html")]
    public async Task Each_has_a_tag_of_its_own(string accept)
    {
        Answer answer = await service.Get(Quick, ("Accept", accept));
        string tag = answer.Headers["ETag"];
        Assert.Equal(304, (await service.Get(Quick, ("Accept", accept), ("If-None-Match", tag))).Status);
        string other = accept == Json ? "text/html" : Json;
        Assert.Equal(200, (await service.Get(Quick, ("Accept", other), ("If-None-Match", tag))).Status);
    }

    [Fact]
    public async Task What_is_wrong_with_a_build_is_said_as_a_problem_whatever_is_wanted() =>
        ProblemAssertions.IsProblem(
            await service.Post("{}", headers: ("Accept", "text/html, application/problem+json")), 400, "request.not-understood");

    [Fact]
    public async Task A_record_is_drawn_too()
    {
        (string, string) key = ("Authorization", $"Bearer {await service.Key("drawn")}");
        Answer made = await service.PostTo(
            "/v1/assessments?record=true", Builds.Small, Json, key, ("Accept", "image/svg+xml"));
        Assert.Equal((201, Drawing), (made.Status, made.ContentType));
        Answer drawing = await service.Get(made.Headers["Location"], key, ("Accept", "image/svg+xml"));
        Assert.Equal((200, made.Text), (drawing.Status, drawing.Text));
        Answer sheet = await service.Get(made.Headers["Location"], key, ("Accept", "text/html"));
        Assert.Equal((200, Sheet), (sheet.Status, sheet.ContentType));
        Assert.Contains(made.Headers["Location"].Split('/')[^1], sheet.Text);
        Assert.Equal(Json, (await service.Get(made.Headers["Location"], key)).ContentType);
    }

    /// <summary>Content Security Policy level 3: neither script nor styles inside are allowed, and none are there.</summary>
    [Fact]
    public async Task A_sheet_loads_its_styles_from_here_and_nothing_else()
    {
        Answer sheet = await service.Get(Quick, ("Accept", "text/html"));
        string policy = sheet.Headers["Content-Security-Policy"];
        Assert.Contains("default-src 'none'", policy);
        Assert.Contains("style-src 'self'", policy);
        Assert.DoesNotContain("unsafe", policy);
        Assert.DoesNotMatch("<style|<script| style=| on[a-z]+=", sheet.Text);
        Answer styles = await service.Get("/sheet.css");
        Assert.Equal((200, "text/css; charset=utf-8"), (styles.Status, styles.ContentType));
        Assert.Contains("href=\"/sheet.css\"", sheet.Text);
        Assert.Contains("@media print", styles.Text);
    }

    [Fact]
    public async Task The_name_of_the_shop_is_a_setting_and_stays_text()
    {
        await using var other = new ServiceFixture();
        other.Settings["Cablewright:SheetShop"] = "<b>Lugger</b> & Lane";
        await other.InitializeAsync();
        string sheet = (await other.Get(Quick, ("Accept", "text/html"))).Text;
        Assert.Contains("&lt;b&gt;Lugger&lt;/b&gt; &amp; Lane", sheet);
        Assert.DoesNotContain("<b>", sheet);
    }
}
