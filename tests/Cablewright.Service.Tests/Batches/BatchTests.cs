using System.Text;
using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Documents;
using Cablewright.Service.Tests.Examples;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Batches;

public class BatchTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private const string Json = "application/json";
    private const string Lines = "application/x-ndjson";

    private static readonly (string, string) Named = ("X-Correlation-Id", "the-same");

    /// <summary>Builds on one line each: all examples, and some that are refused.</summary>
    private static readonly string[] Several =
    [
        .. ExampleFiles.Names.Select(name => JsonNode.Parse(ExampleFiles.Request(name))!.ToJsonString()),
        Builds.With(build => build["runs"]![0]!["lenght"] = "3 ft"),
        Builds.With(build => build["runs"]![0]!["length"] = "3000 ft"),
        "[]",
        "null",
        JsonNode.Parse(Builds.Small)!.ToJsonString(),
    ];

    [Theory]
    [InlineData(Json)]
    [InlineData(Lines)]
    public async Task Each_build_gets_the_very_bytes_that_it_gets_by_itself_in_order(string form)
    {
        var expected = new List<string>();
        foreach (string build in Several)
        {
            Answer single = await service.Post(build, headers: Named);
            string member = single.Status == 200 ? "assessment" : "problem";
            expected.Add($$"""{"line":{{expected.Count + 1}},"status":{{single.Status}},"{{member}}":{{single.Text}}}""");
        }

        Answer batch = await service.PostBatch(Body(form, Several), form, Named);
        Assert.Equal(200, batch.Status);
        Assert.Equal(form, batch.ContentType);
        Assert.Equal(
            form == Json ? $"[{string.Join(',', expected)}]" : string.Concat(expected.Select(line => line + "\n")), batch.Text);
    }

    [Theory]
    [InlineData(Json, "*/*", Json)]
    [InlineData(Lines, "*/*", Lines)]
    [InlineData(Lines, "application/json", Json)]
    [InlineData(Json, "application/x-ndjson", Lines)]
    [InlineData(Json, "application/json;q=0.1, application/x-ndjson", Lines)]
    [InlineData(Lines, "application/json, application/x-ndjson", Lines)]
    [InlineData(Lines + "; charset=utf-8", "", Lines)]
    public async Task The_answer_has_the_form_of_the_request_unless_the_other_is_preferred(
        string sent, string accept, string form)
    {
        Answer answer = await service.PostBatch(Body(sent, "{}", "[]"), sent, ("Accept", accept));
        Assert.Equal((200, form), (answer.Status, answer.ContentType));
        Assert.Equal([1, 2], Items(answer).Select(item => (int)item["line"]!));
    }

    [Fact]
    public async Task A_form_that_is_not_served_is_a_problem()
    {
        ProblemAssertions.IsProblem(
            await service.PostBatch("", Lines, ("Accept", "text/html")), 406, "answer.not-acceptable");
        foreach (string type in new[] { "text/plain", "", "application/x-ndjson; charset=utf-16", "application/ndjson" })
            ProblemAssertions.IsProblem(await service.PostBatch("[]", type), 415, "body.unsupported-media-type");
        var packed = new HttpRequestMessage(HttpMethod.Post, "/v1/assessments/batch") { Content = new StringContent("[]") };
        packed.Content.Headers.ContentType = new(Json);
        packed.Content.Headers.ContentEncoding.Add("gzip");
        ProblemAssertions.IsProblem(await service.Send(packed), 415, "body.unsupported-media-type");
    }

    [Fact]
    public async Task Blank_lines_are_counted_and_line_ends_and_a_byte_order_mark_do_not_matter()
    {
        Answer answer = await service.PostBatch("\ufeff\r\n{}\r\n\n \t\n{}\n\r\n{}", Lines);
        Assert.Equal([2, 5, 7], answer.Lines.Select(line => (int)line["line"]!));
        Assert.Equal([3], (await service.PostBatch("\n\n{}\r", Lines)).Lines.Select(line => (int)line["line"]!));
        Assert.Equal(200, (int)Assert.Single((await service.PostBatch("\ufeff" + Several[0], Lines)).Lines)["status"]!);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n")]
    [InlineData("\ufeff\r\n  \r\n")]
    public async Task No_lines_get_no_answers(string body)
    {
        Answer answer = await service.PostBatch(body, Lines);
        Assert.Equal((200, Lines, ""), (answer.Status, answer.ContentType, answer.Text));
    }

    [Theory]
    [InlineData("[]")]
    [InlineData(" [ ] ")]
    [InlineData("\ufeff[]")]
    public async Task An_empty_array_gets_an_empty_array(string body)
    {
        Answer answer = await service.PostBatch(body, Json);
        Assert.Equal((200, Json, "[]"), (answer.Status, answer.ContentType, answer.Text));
    }

    [Theory]
    [InlineData("", "body.empty")]
    [InlineData("[{}", "json.malformed")]
    [InlineData("[{},]", "json.malformed")]
    [InlineData("[{}] 1", "json.malformed")]
    [InlineData("[{]]", "json.malformed")]
    [InlineData("{}", "value.wrong-type")]
    [InlineData("17", "value.wrong-type")]
    [InlineData("null", "value.wrong-type")]
    public async Task What_is_no_array_is_one_problem(string body, string code)
    {
        Answer answer = await service.PostBatch(body, Json);
        ProblemAssertions.IsProblem(answer, 400, "request.not-understood");
        Assert.Equal([("", code)], answer.Faults);
    }

    [Theory]
    [InlineData(Json)]
    [InlineData(Lines)]
    public async Task A_bad_build_fails_alone(string form)
    {
        string deep = $"{{\"name\":{new string('[', 16)}{new string(']', 16)}}}";
        string[] builds = ["{}", deep, "{\"name\":\"?\"}", "{" + Large, "{}"];
        byte[] body = Encoding.UTF8.GetBytes(Body(form, builds));
        body[Array.IndexOf(body, (byte)'?')] = 0xff;
        Answer answer = await service.PostBatch(body, form);
        Assert.Equal(
            ["400 member.missing", "400 json.too-deep", "400 json.not-utf8", "413 body.too-large", "400 member.missing"],
            Items(answer).Select(item => $"{item["status"]} {item["problem"]!["errors"]![0]!["code"]}"));
    }

    [Fact]
    public async Task A_line_that_is_no_JSON_fails_alone_and_names_its_line()
    {
        Answer answer = await service.PostBatch($"{Several[0]}\n\n{{\"name\" 1}}\n\0\n}}\n{Several[0]}\n", Lines);
        Assert.Equal([200, 400, 400, 400, 200], answer.Lines.Select(line => (int)line["status"]!));
        Assert.StartsWith("line 3, column 9: expected ':'", (string)answer.Lines[1]["problem"]!["errors"]![0]!["detail"]!);
    }

    [Theory]
    [InlineData(0, "member.missing")]
    [InlineData(1, "body.too-large")]
    public async Task A_line_holds_256_KB_and_not_a_byte_more(int over, string code)
    {
        string line = "{}".PadRight(262_144 + over);
        Answer answer = await service.PostBatch($"{line}\r\n{line}", Lines);
        Assert.Equal([code, code], answer.Lines.Select(item => (string)item["problem"]!["errors"]![0]!["code"]!));
    }

    [Theory]
    [InlineData(1_000, 200)]
    [InlineData(1_001, 413)]
    public async Task An_array_holds_1000_builds_and_not_one_more(int count, int status)
    {
        Answer answer = await service.PostBatch($"[{string.Join(',', Enumerable.Repeat("1", count))}]", Json);
        Assert.Equal(status, answer.Status);
        if (status == 200) Assert.Equal(1_000, answer.Json.AsArray().Count);
        else Assert.Equal([("", "items.too-many")], answer.Faults);
    }

    [Theory]
    [InlineData(0, 200)]
    [InlineData(1, 413)]
    public async Task An_array_holds_8_MB_and_not_a_byte_more(int over, int status)
    {
        Answer answer = await service.PostBatch("[1]".PadRight(8 * 1024 * 1024 + over), Json);
        Assert.Equal(status, answer.Status);
        if (status != 200) ProblemAssertions.IsProblem(answer, 413, "body.too-large");
    }

    [Fact]
    public async Task Lines_are_not_counted()
    {
        Answer answer = await service.PostBatch(string.Concat(Enumerable.Repeat("1\n", 1_500)), Lines);
        Assert.Equal(Enumerable.Range(1, 1_500), answer.Lines.Select(line => (int)line["line"]!));
    }

    [Fact]
    public async Task An_answer_is_valid()
    {
        foreach (JsonNode line in (await service.PostBatch(Body(Lines, Several), Lines)).Lines)
            Assert.Empty(ContractSchemas.Faults("BatchAnswer", line));
    }

    private static string Large => $"\"name\":\"{new string('x', 262_144)}\"}}";

    private static IEnumerable<JsonNode> Items(Answer answer) =>
        answer.ContentType == Json ? answer.Json.AsArray().Select(item => item!) : answer.Lines;

    private static string Body(string form, params string[] builds) =>
        form == Json ? $"[{string.Join(',', builds)}]" : string.Join('\n', builds);
}
