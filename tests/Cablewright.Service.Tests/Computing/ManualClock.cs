namespace Cablewright.Service.Tests.Computing;

/// <summary>A clock that stands until it is moved.</summary>
internal sealed class ManualClock : TimeProvider
{
    private long ticks;

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override long GetTimestamp() => ticks;

    public void Advance(TimeSpan time) => ticks += time.Ticks;
}

/// <summary>A clock by which whatever is waited for is due at once.</summary>
internal sealed class HastyClock : TimeProvider
{
    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        if (dueTime != Timeout.InfiniteTimeSpan) callback(state);
        return System.CreateTimer(_ => { }, null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
    }
}
