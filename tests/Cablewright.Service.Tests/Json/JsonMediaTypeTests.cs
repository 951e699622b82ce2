using Cablewright.Service.Json;

namespace Cablewright.Service.Tests.Json;

public sealed class JsonMediaTypeTests
{
    [Theory]
    [InlineData("application/json", true)]
    [InlineData("Application/JSON; charset=UTF-8", true)]
    [InlineData("application/json; charset=\"utf-8\"", true)]
    [InlineData("application/vnd.example+json", true)]
    [InlineData("application/json; charset=utf-16", false)]
    [InlineData("text/json", false)]
    [InlineData("application/x-ndjson", false)]
    [InlineData("application/x-www-form-urlencoded", false)]
    [InlineData("*/*", false)]
    [InlineData("nonsense", false)]
    [InlineData("", false)]
    [InlineData(null, false)]
    public void Only_JSON_announces_JSON(string? contentType, bool announces) =>
        Assert.Equal(announces, JsonMediaType.Announces(contentType));
}
