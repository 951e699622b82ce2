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

    [Fact]
    public async Task A_table_takes_none_either_and_a_health_check_any()
    {
        ProblemAssertions.IsProblem(await service.Get("/v1/reference/fuses?family=ANL"), 400, "request.not-understood");
        Assert.Equal(200, (await service.Get("/v1/reference/fuses?")).Status);
        Assert.Equal(200, (await service.Get("/health/live?probe=7")).Status);
    }
}
