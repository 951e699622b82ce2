using Cablewright.Service.Computing;

namespace Cablewright.Service.Tests.Computing;

public class WorkBucketsTests
{
    private const string Address = "192.0.2.1";
    private const double Each = WorkBuckets.EachRequest;

    private static readonly TimeSpan Moment = TimeSpan.FromMilliseconds(1);

    private readonly ManualClock clock = new();

    [Fact]
    public void A_minutes_worth_is_there_at_first_and_no_more_however_long_nothing_is_asked()
    {
        var buckets = new WorkBuckets(3 * Each, clock);
        for (int round = 0; round < 2; round++)
        {
            for (int asked = 0; asked < 3; asked++) Assert.True(buckets.TryStart(Address, out _));
            Assert.False(buckets.TryStart(Address, out _));
            clock.Advance(TimeSpan.FromHours(1));
        }
    }

    [Fact]
    public void The_wait_is_the_true_one_and_asking_in_vain_costs_nothing()
    {
        var buckets = new WorkBuckets(2 * Each, clock);
        buckets.TryStart(Address, out _);
        buckets.TryStart(Address, out _);
        Assert.False(buckets.TryStart(Address, out TimeSpan wait));
        Assert.Equal(30, wait.TotalSeconds, 1e-6);
        clock.Advance(wait - Moment);
        Assert.False(buckets.TryStart(Address, out _));
        clock.Advance(2 * Moment);
        Assert.True(buckets.TryStart(Address, out wait));
        Assert.Equal(TimeSpan.Zero, wait);
    }

    /// <summary>
    /// Of 60 requests' worth a minute one comes in a second: 59 are left, 159 more were used, and one must be there.
    /// </summary>
    [Fact]
    public void What_a_computation_cost_is_owed()
    {
        var buckets = new WorkBuckets(60 * Each, clock);
        buckets.TryStart(Address, out _);
        buckets.Charge(Address, 159 * Each);
        Assert.False(buckets.TryStart(Address, out TimeSpan wait));
        Assert.Equal(101, wait.TotalSeconds, 1e-6);
        Assert.True(buckets.TryStart("192.0.2.2", out _));
    }

    [Fact]
    public void A_request_a_minute_can_be_had_where_less_is_set() =>
        Assert.True(new WorkBuckets(Each / 10, clock).TryStart(Address, out _));

    [Fact]
    public void Addresses_that_owe_nothing_are_forgotten()
    {
        var buckets = new WorkBuckets(60 * Each, clock);
        for (int number = 0; number < 100; number++) buckets.TryStart($"{number}", out _);
        buckets.Charge(Address, 600 * Each);
        clock.Advance(TimeSpan.FromMinutes(1));
        buckets.TryStart("another", out _);
        Assert.Equal(2, buckets.Count);
        Assert.False(buckets.TryStart(Address, out _));
    }

    [Fact]
    public void Of_very_many_addresses_the_last_share_a_bucket()
    {
        var buckets = new WorkBuckets(2 * Each, clock);
        for (int number = 0; number < WorkBuckets.MostAddresses; number++) buckets.TryStart($"{number}", out _);
        Assert.True(buckets.TryStart("one more", out _));
        Assert.True(buckets.TryStart("another", out _));
        Assert.False(buckets.TryStart("a third", out _));
        Assert.True(buckets.TryStart("0", out _));
        Assert.Equal(WorkBuckets.MostAddresses + 1, buckets.Count);
    }
}
