using Cablewright.Service.Hosting;
using Cablewright.Service.Tests.Support;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace Cablewright.Service.Tests.Computing;

public class LoadSettingsTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData("ComputationSeconds", "0")]
    [InlineData("ComputationsAtOnce", "0")]
    [InlineData("ComputationsWaiting", "-1")]
    [InlineData("WaitingSeconds", "-2")]
    [InlineData("AnonymousWorkPerMinute", "-1")]
    [InlineData("ShopWorkPerMinute", "-1")]
    [InlineData("BodyMegabytes", "0")]
    [InlineData("BodySeconds", "0")]
    [InlineData("DrainSeconds", "-1")]
    public void A_setting_that_cannot_be_is_named(string name, string value)
    {
        var error = Assert.Throws<InvalidOperationException>(() => LoadSettings.Of(Configuration(name, value)));
        Assert.Contains($"Cablewright:{name}", error.Message);
    }

    [Fact]
    public void A_setting_is_read_and_the_others_have_defaults()
    {
        LoadSettings load = LoadSettings.Of(Configuration("ComputationSeconds", "1.5"));
        Assert.Equal((1.5, Environment.ProcessorCount), (load.ComputationSeconds, load.ComputationsAtOnce));
        Assert.Equal(new LoadSettings(), LoadSettings.Of(new ConfigurationBuilder().Build()));
    }

    [Fact]
    public void Threads_are_left_for_reading_and_answering()
    {
        LoadSettings load = service.Services.GetRequiredService<LoadSettings>();
        ThreadPool.GetMinThreads(out int workers, out _);
        Assert.True(workers >= load.ComputationsAtOnce + Environment.ProcessorCount);
    }

    private static IConfiguration Configuration(string name, string value) => new ConfigurationBuilder()
        .AddInMemoryCollection(new Dictionary<string, string?> { [$"Cablewright:{name}"] = value })
        .Build();
}
