using Cablewright.Service.Problems;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Problems;

public class ProblemTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData("GET", "/nothing", 404, "resource.not-found")]
    [InlineData("GET", "/v1", 404, "resource.not-found")]
    [InlineData("GET", "/v1/assessments/asm_0", 401, "key.missing")]
    [InlineData("GET", "/v1/rulesets/1999.1", 404, "resource.not-found")]
    [InlineData("GET", "/docs/problems/nothing", 404, "resource.not-found")]
    [InlineData("GET", "/openapi/v2.json", 404, "resource.not-found")]
    [InlineData("GET", "/v1/assessments", 405, "method.not-allowed")]
    [InlineData("DELETE", "/v1/rulesets", 405, "method.not-allowed")]
    [InlineData("POST", "/v1/assessments/quick", 405, "method.not-allowed")]
    [InlineData("POST", "/v1/assessments", 415, "body.unsupported-media-type")]
    public async Task An_address_or_method_that_is_not_served_is_a_problem(string method, string address, int status, string code)
    {
        Answer answer = await service.Send(new HttpRequestMessage(new HttpMethod(method), address));
        ProblemAssertions.IsProblem(answer, status, code);
        if (status == 405)
            Assert.Contains(method == "POST" ? "GET" : address == "/v1/assessments" ? "POST" : "GET", answer.Headers["Allow"]);
    }

    [Theory]
    [InlineData("/v1/assesments", "/v1/assesments")]
    [InlineData("/v1/rulesets/1999.1", "ruleset \"1999.1\"")]
    [InlineData("/docs/problems/build.fulty", "kind of problem \"build.fulty\"")]
    [InlineData("/v1/shops/missing/kits/AK-150", "The shop missing keeps no kit \"AK-150\"")]
    [InlineData("/v1/shops/others/kits/AK-150", "no shop \"others\" for this key")]
    [InlineData("/v1/shops/others/kits", "no shop \"others\" for this key")]
    [InlineData("/v1/assessments/asm_0", "record \"asm_0\"")]
    public async Task What_is_not_there_is_named(string address, string named)
    {
        string key = await service.Key("missing");
        foreach (HttpMethod method in address.Contains('_') || address.EndsWith("AK-150", StringComparison.Ordinal)
            ? (HttpMethod[])[HttpMethod.Get, HttpMethod.Delete]
            : [HttpMethod.Get])
        {
            Answer answer = await service.Send(new HttpRequestMessage(method, address), ("Authorization", $"Bearer {key}"));
            ProblemAssertions.IsProblem(answer, 404, "resource.not-found");
            Assert.Contains(named, (string)answer.Json["detail"]!);
        }
    }

    /// <summary>RFC 9457, 3.1.1: relative types are resolved against whatever the reader takes for the base.</summary>
    [Fact]
    public async Task A_type_is_an_address_that_leads_to_its_page()
    {
        var type = new Uri((string)(await service.Post("[]")).Json["type"]!);
        Assert.StartsWith("http://", type.OriginalString);
        Answer page = await service.Get(type.OriginalString);
        Assert.Equal(200, page.Status);
        Assert.Contains("request.not-understood", page.Text);
    }

    [Theory]
    [InlineData("application/xml")]
    [InlineData("text/plain")]
    [InlineData("")]
    [InlineData("application/json; charset=utf-16")]
    [InlineData("nonsense")]
    public async Task A_body_of_another_type_is_a_problem(string contentType) =>
        ProblemAssertions.IsProblem(await service.Post(Builds.Small, contentType), 415, "body.unsupported-media-type");

    [Fact]
    public async Task A_compressed_body_is_a_problem()
    {
        var request = new HttpRequestMessage(HttpMethod.Post, "/v1/assessments") { Content = new StringContent(Builds.Small) };
        request.Content.Headers.ContentType = new("application/json");
        request.Content.Headers.ContentEncoding.Add("gzip");
        ProblemAssertions.IsProblem(await service.Send(request), 415, "body.unsupported-media-type");
    }

    [Theory]
    [InlineData("text/html", 406)]
    [InlineData("application/json;q=0", 406)]
    [InlineData("application/json;q=0, */*", 406)]
    [InlineData("not a media type", 406)]
    [InlineData("*/*", 200)]
    [InlineData("application/*", 200)]
    [InlineData("text/html, application/json;q=0.5", 200)]
    [InlineData("text/html, */*;q=0.1", 200)]
    [InlineData("APPLICATION/JSON", 200)]
    public async Task The_form_of_the_answer_is_the_callers_to_refuse(string accept, int status)
    {
        Answer answer = await service.Get("/v1/rulesets", ("Accept", accept));
        Assert.Equal(status, answer.Status);
        if (status == 406) ProblemAssertions.IsProblem(answer, 406, "answer.not-acceptable");
    }

    [Theory]
    [InlineData("", "body.empty")]
    [InlineData("{", "json.malformed")]
    [InlineData("{\"runs\":[],}", "json.malformed")]
    [InlineData("[]", "value.wrong-type")]
    [InlineData("17", "value.wrong-type")]
    public async Task A_body_that_is_no_build_is_a_problem(string body, string code)
    {
        Answer answer = await service.Post(body);
        ProblemAssertions.IsProblem(answer, 400, "request.not-understood");
        Assert.Contains(answer.Faults, fault => fault.Code == code);
    }

    [Fact]
    public async Task A_misspelt_member_is_refused_with_the_name_that_was_meant()
    {
        Answer answer = await service.Post(Builds.With(build => build["runs"]![0]!["lenght"] = "3 ft"));
        ProblemAssertions.IsProblem(answer, 400, "request.not-understood");
        Assert.Equal([("/runs/0/lenght", "member.unknown")], answer.Faults);
        Assert.Contains("\"length\"", (string)answer.Json["errors"]![0]!["detail"]!);
    }

    [Fact]
    public async Task Faults_of_shape_and_of_quantities_are_listed_together()
    {
        Answer answer = await service.Post(Builds.With(build =>
        {
            build["runs"]![0]!["length"] = 16;
            build["runs"]![1]!["length"] = "3";
            build["units"] = "imperial";
            build["runs"]![1]!["from"] = null;
        }));
        ProblemAssertions.IsProblem(answer, 400, "request.not-understood");
        Assert.Equal(
            [
                ("/runs/0/length", "quantity.unit-missing"), ("/runs/1/from", "value.null"),
                ("/runs/1/length", "quantity.unit-missing"), ("/units", "word.unknown")],
            answer.Faults.Order());
    }

    [Fact]
    public async Task Faults_of_content_and_of_the_circuit_are_listed_together()
    {
        Answer answer = await service.Post("""
            {
              "ruleset": "1999.1",
              "name": "ABCDEFGHIJABCDEFGHIJABCDEFGHIJABCDEFGHIJABCDEFGHIJABCDEFGHIJABCDEFGHIJABCDEFGHIJABCDEFGHIJABCDEFGHIJ+",
              "vehicle": { "chargingVoltage": "400 V", "batteries": [ { "id": "starter" } ], "alternator": { "at": "engine" } },
              "amplifiers": [
                { "id": "body", "fuse": "40 A" },
                { "id": "bass", "ratedOutput": "500 W", "programme": "sine", "crestFactor": "9 dB", "efficiency": "-80 %" },
                { "id": "mids" }
              ],
              "junctions": [ { "id": "engine" } ],
              "runs": [
                { "id": "feed", "from": "starter", "to": "bass", "length": "1,5 m",
                  "conductor": { "size": "4", "count": 9 } },
                { "id": "feed", "from": "starter", "to": "blok", "length": "12 furlongs",
                  "fuse": { "fitted": false, "rating": "80 A" } },
                { "id": "a b", "from": "starter", "to": "mids", "length": "0 m" },
                { "id": "loop", "from": "mids", "to": "mids", "length": "1 m" }
              ],
              "limits": { "maxDrop": "3 A" },
              "sizing": { "sizes": ["4 AWG", "26 mm2"], "materials": [] }
            }
            """);
        ProblemAssertions.IsProblem(answer, 422, "build.faulty");
        foreach ((string, string) fault in new[]
        {
            ("/ruleset", "ruleset.unknown"),
            ("/name", "text.too-long"),
            ("/vehicle/chargingVoltage", "quantity.too-large"),
            ("/vehicle/alternator/at", "alternator.place-unknown"),
            ("/amplifiers/0/id", "id.reserved"),
            ("/junctions/0/id", "id.reserved"),
            ("/amplifiers/1/crestFactor", "amplifier.programme-twice"),
            ("/amplifiers/1/efficiency", "quantity.negative"),
            ("/amplifiers/2", "amplifier.draw-unknown"),
            ("/runs/0/length", "quantity.comma"),
            ("/runs/0/conductor/size", "size.unreadable"),
            ("/runs/0/conductor/count", "number.out-of-range"),
            ("/runs/1/id", "id.taken"),
            ("/runs/1/length", "quantity.unit-unknown"),
            ("/runs/1/fuse/fitted", "fuse.not-fitted"),
            ("/runs/1/to", "place.joins-nothing"),
            ("/runs/2/id", "id.malformed"),
            ("/runs/2/length", "quantity.too-small"),
            ("/runs/3/to", "run.ends-equal"),
            ("/limits/maxDrop", "quantity.wrong-unit"),
            ("/sizing/sizes/1", "size.unreadable"),
            ("/sizing/materials", "items.too-few"),
        })
            Assert.Contains(fault, answer.Faults);
        Assert.Equal(answer.Faults.Count(), answer.Faults.Distinct().Count());
    }

    [Fact]
    public async Task Every_type_leads_to_its_page()
    {
        foreach (ProblemKind kind in ProblemKinds.All)
        {
            Answer page = await service.Get(ProblemPages.Path + kind.Code);
            Assert.Equal(200, page.Status);
            Assert.StartsWith("text/html", page.ContentType);
            Assert.Contains(kind.Title, page.Text);
        }
    }

    [Theory]
    [InlineData("caller-1.A_b", true)]
    [InlineData("has space", false)]
    [InlineData("<script>", false)]
    [InlineData("12345678901234567890123456789012345678901234567890123456789012345", false)]
    public async Task A_harmless_name_for_the_request_is_taken_over(string offered, bool taken)
    {
        Answer answer = await service.Get("/nowhere", ("X-Correlation-Id", offered));
        Assert.Equal(taken, answer.Headers["X-Correlation-Id"] == offered);
        Assert.Equal(answer.Headers["X-Correlation-Id"], (string)answer.Json["traceId"]!);
    }
}
