using System.Runtime.CompilerServices;
using Cablewright.Service.Batches;

namespace Cablewright.Service.Tests.Batches;

public class InOrderTests
{
    private const int Ahead = 3;

    private int begun;
    private int atOnce;
    private int most;

    [Fact]
    public async Task Results_come_in_the_order_of_the_row_however_long_each_takes()
    {
        var random = new Random(7);
        int[] pauses = [.. Enumerable.Range(0, 300).Select(_ => random.Next(4))];
        var taken = new List<int>();
        await InOrder.Run(
            Row(pauses.Length),
            (item, _) => { Thread.Sleep(pauses[item]); return Task.FromResult(item); },
            (item, _) => { taken.Add(item); return Task.CompletedTask; },
            Ahead,
            CancellationToken.None);
        Assert.Equal(Enumerable.Range(0, pauses.Length), taken);
    }

    [Fact]
    public async Task Few_are_worked_on_at_once_and_the_row_waits_for_the_taker()
    {
        int taken = 0;
        await InOrder.Run(
            Row(200),
            Work,
            async (_, cancellation) =>
            {
                await Task.Delay(1, cancellation);
                taken++;
                Assert.InRange(Volatile.Read(ref begun) - taken, 0, Ahead + 2);
            },
            Ahead,
            CancellationToken.None);
        Assert.Equal((200, 200), (begun, taken));
        Assert.InRange(most, 1, Ahead + 2);
    }

    [Fact]
    public async Task Nothing_is_begun_after_it_was_cancelled_and_nothing_is_left_running()
    {
        using var stop = new CancellationTokenSource();
        int taken = 0;
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => InOrder.Run(
            Row(int.MaxValue),
            Work,
            (_, _) => ++taken == 20 ? stop.CancelAsync() : Task.CompletedTask,
            Ahead,
            stop.Token));
        Assert.Equal(20, taken);
        await IsAtRest();
        Assert.InRange(begun, 20, 20 + Ahead + 2);
    }

    [Fact]
    public async Task It_ends_where_a_result_cannot_be_taken()
    {
        await Assert.ThrowsAsync<IOException>(() => InOrder.Run(
            Row(int.MaxValue), Work, (item, _) => throw new IOException(), Ahead, CancellationToken.None));
        await IsAtRest();
        Assert.InRange(begun, 1, Ahead + 2);
    }

    [Fact]
    public async Task What_came_before_the_row_broke_is_still_taken()
    {
        var taken = new List<int>();
        await Assert.ThrowsAsync<InvalidDataException>(() => InOrder.Run(
            Broken(),
            Work,
            (item, _) => { taken.Add(item); return Task.CompletedTask; },
            Ahead,
            CancellationToken.None));
        Assert.Equal(Enumerable.Range(0, 10), taken);
    }

    private Task<int> Work(int item, CancellationToken cancellation)
    {
        Interlocked.Increment(ref begun);
        int now = Interlocked.Increment(ref atOnce);
        lock (this) most = Math.Max(most, now);
        Thread.Sleep(1);
        Interlocked.Decrement(ref atOnce);
        return Task.FromResult(item);
    }

    /// <summary>Work that ran on would be seen to begin while this waits.</summary>
    private async Task IsAtRest()
    {
        Assert.Equal(0, Volatile.Read(ref atOnce));
        int before = Volatile.Read(ref begun);
        await Task.Delay(50);
        Assert.Equal(before, Volatile.Read(ref begun));
    }

    private static async IAsyncEnumerable<int> Row(int count, [EnumeratorCancellation] CancellationToken cancellation = default)
    {
        for (int item = 0; item < count; item++)
        {
            if (item % 7 == 0) await Task.Yield();
            cancellation.ThrowIfCancellationRequested();
            yield return item;
        }
    }

    private static async IAsyncEnumerable<int> Broken()
    {
        await foreach (int item in Row(10)) yield return item;
        throw new InvalidDataException();
    }
}
