using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Tests.Support;

/// <summary>What every problem has to be.</summary>
public static class ProblemAssertions
{
    public static void IsProblem(Answer answer, int status, string code)
    {
        Assert.Equal(status, answer.Status);
        Assert.Equal("application/problem+json", answer.ContentType);
        JsonNode problem = answer.Json;
        Assert.Equal(
            ["type", "title", "status", "detail", "code", "traceId", "errors"], problem.AsObject().Select(member => member.Key));
        Assert.Equal((status, code), ((int)problem["status"]!, (string)problem["code"]!));
        Assert.Matches("^http://[^/]+/docs/problems/" + Regex.Escape(code) + "$", (string)problem["type"]!);
        Assert.Equal(answer.Headers["X-Correlation-Id"], (string)problem["traceId"]!);
        Assert.Equal("nosniff", answer.Headers["X-Content-Type-Options"]);
        Assert.All(answer.Faults, fault => Assert.Contains(FaultKinds.All, kind => kind.Code == fault.Code));
        Assert.DoesNotContain("   at ", answer.Text);
    }
}
