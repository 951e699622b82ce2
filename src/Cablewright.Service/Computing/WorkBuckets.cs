namespace Cablewright.Service.Computing;

/// <summary>
/// How much work each address, or each shop, may still ask for: a bucket that fills at an even rate and holds one minute's worth.
/// What a request costs is known only afterwards, so that a bucket can go below nothing; the framework's own buckets cannot.
/// </summary>
/// <param name="perMinute">The work that comes into each bucket, in units a minute; above 0.</param>
/// <param name="clock">Tells the time.</param>
internal sealed class WorkBuckets(double perMinute, TimeProvider clock)
{
    /// <summary>What a request costs before anything is computed, in units.</summary>
    public const double EachRequest = 1_000;

    /// <summary>The most addresses that are told apart; any further ones share a bucket.</summary>
    public const int MostAddresses = 65_536;

    private const string Others = "others";

    private static readonly TimeSpan BetweenSweeps = TimeSpan.FromSeconds(30);

    private readonly Lock gate = new();
    private readonly Dictionary<string, Bucket> buckets = [];
    private readonly double full = Math.Max(perMinute, EachRequest);
    private readonly double perSecond = perMinute / 60;
    private long swept = clock.GetTimestamp();

    /// <summary>How many addresses are known by name.</summary>
    public int Count
    {
        get
        {
            lock (gate) return buckets.Count;
        }
    }

    /// <summary>Takes the cost of a request, where it is there.</summary>
    /// <param name="address">Whose bucket.</param>
    /// <param name="wait">After how long it will be there; nothing where it was taken.</param>
    public bool TryStart(string address, out TimeSpan wait)
    {
        lock (gate)
        {
            long now = clock.GetTimestamp();
            Sweep(now);
            double left = LeftOf(address, now) - EachRequest;
            wait = left >= 0 ? TimeSpan.Zero : TimeSpan.FromSeconds(-left / perSecond);
            if (left >= 0) Set(address, left, now);
            return left >= 0;
        }
    }

    /// <summary>Takes what a computation cost, in units, whether it is there or not.</summary>
    public void Charge(string address, double work)
    {
        lock (gate)
        {
            long now = clock.GetTimestamp();
            Set(address, LeftOf(address, now) - work, now);
        }
    }

    private double LeftOf(string address, long now) =>
        buckets.TryGetValue(KeyOf(address), out Bucket bucket) ? LeftOf(bucket, now) : full;

    private double LeftOf(Bucket bucket, long now) =>
        Math.Min(full, bucket.Left + perSecond * clock.GetElapsedTime(bucket.At, now).TotalSeconds);

    private void Set(string address, double left, long now) => buckets[KeyOf(address)] = new Bucket(left, now);

    private string KeyOf(string address) => buckets.Count < MostAddresses || buckets.ContainsKey(address) ? address : Others;

    /// <summary>Forgets full buckets: they are as good as new ones.</summary>
    private void Sweep(long now)
    {
        if (clock.GetElapsedTime(swept, now) < BetweenSweeps) return;
        swept = now;
        foreach ((string address, Bucket bucket) in buckets)
            if (LeftOf(bucket, now) >= full) buckets.Remove(address);
    }

    /// <summary>What was left in a bucket at a time.</summary>
    private readonly record struct Bucket(double Left, long At);
}
