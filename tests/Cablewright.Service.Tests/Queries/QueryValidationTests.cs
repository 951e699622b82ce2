using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Queries;

public class QueryGateTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    /// <summary>A batch is not recorded, so that asking for it must not look as if it were.</summary>
    [Theory]
    [InlineData("/v1/assessments/batch?record=true", "/record")]
    [InlineData("/v1/kit-checks?shop=demo", "/shop")]
    [InlineData("/v1/conductor-audits?record=true", "/record")]
    [InlineData("/v1/assessments/comparisons?include=headroom", "/include")]
    public async Task A_parameter_of_a_call_that_has_none_is_refused(string address, string pointer)
    {
        Answer answer = await service.PostTo(address, "{}");
        ProblemAssertions.IsProblem(answer, 400, "request.not-understood");
        Assert.Equal([(pointer, "parameter.unknown")], answer.Faults);
        Assert.Equal("none", (string)answer.Json["errors"]![0]!["accepted"]!);
    }

    [Theory]
    [InlineData("/v1/reference/fuses", 0)]
    [InlineData("/v1/assessments/quick", 2)]
    public async Task At_most_100_faults_are_listed(string address, int missing)
    {
        string query = string.Join('&', Enumerable.Range(0, 100 - missing).Select(number => $"p{number}"));
        Assert.Equal(100, (await service.Get($"{address}?{query}")).Faults.Count());
        (string, string)[] faults = [.. (await service.Get($"{address}?{query}&{query}&one-more")).Faults];
        Assert.Equal(101, faults.Length);
        Assert.Equal(("", "errors.more"), faults[^1]);
    }

    [Fact]
    public async Task A_table_takes_none_either_and_a_health_check_any()
    {
        ProblemAssertions.IsProblem(await service.Get("/v1/reference/fuses?family=ANL"), 400, "request.not-understood");
        Assert.Equal(200, (await service.Get("/v1/reference/fuses?")).Status);
        Assert.Equal(200, (await service.Get("/health/live?probe=7")).Status);
    }
}
