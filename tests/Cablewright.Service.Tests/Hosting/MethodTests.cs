using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Hosting;

public class MethodTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData("/v1/reference/fuses")]
    [InlineData("/v1/reference/batteries")]
    [InlineData("/v1/assessments/quick?ratedOutput=1000+W&length=16+ft")]
    [InlineData("/health/live")]
    [InlineData("/openapi/v1.json")]
    public async Task Head_gives_the_headers_of_get_without_a_body(string address)
    {
        Answer get = await service.Get(address);
        Answer head = await service.Send(new HttpRequestMessage(HttpMethod.Head, address));
        Assert.Equal(get.Status, head.Status);
        Assert.Equal(get.ContentType, head.ContentType);
        Assert.Equal(get.Headers.GetValueOrDefault("ETag"), head.Headers.GetValueOrDefault("ETag"));
        Assert.NotEmpty(get.Body);
        Assert.Empty(head.Body);
    }

    [Theory]
    [InlineData("/v1/reference/fuses")]
    [InlineData("/v1/rulesets/2026.2")]
    [InlineData("/v1/assessments/quick?ratedOutput=1000+W&length=16+ft")]
    public async Task Head_tells_a_caller_that_has_the_answer_so(string address)
    {
        string tag = (await service.Get(address)).Headers["ETag"];
        Answer head = await service.Send(new HttpRequestMessage(HttpMethod.Head, address), ("If-None-Match", tag));
        Assert.Equal((304, tag), (head.Status, head.Headers["ETag"]));
    }

    [Fact]
    public async Task The_pages_show_no_mark_of_the_library_that_draws_them()
    {
        Assert.Equal(204, (await service.Get("/docs/favicon-32x32.png")).Status);
        Assert.Contains(
            ".swagger-ui .topbar { display: none !important }",
            (await service.Get("/docs/index.html")).Text,
            StringComparison.Ordinal);
    }
}
