using System.Threading.Channels;

namespace Cablewright.Service.Batches;

/// <summary>
/// Works on a few items of an endless row at once and hands the results on in the row's order. Both ends are awaited, so that
/// nothing piles up: while a result is being taken, at most as many as allowed are worked on or wait, and the row is not read on.
/// </summary>
internal static class InOrder
{
    /// <summary>Runs to the row's end, or to the first failure of the row or of the taker, or until it is cancelled.</summary>
    /// <param name="row">The items; read by one reader.</param>
    /// <param name="work">What is done with each, on any thread.</param>
    /// <param name="take">Takes each result, one after another.</param>
    /// <param name="ahead">The most items that are worked on besides the one whose result is due, at least one.</param>
    /// <param name="cancellation">No item is begun and no result taken after this.</param>
    /// <returns>Once nothing is under way any more, however it ended.</returns>
    public static async Task Run<TItem, TResult>(
        IAsyncEnumerable<TItem> row,
        Func<TItem, CancellationToken, Task<TResult>> work,
        Func<TResult, CancellationToken, Task> take,
        int ahead,
        CancellationToken cancellation)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var underWay = Channel.CreateBounded<Task<TResult>>(
            new BoundedChannelOptions(ahead) { SingleReader = true, SingleWriter = true });
        Task feeding = Feed(row, work, underWay.Writer, stop.Token);
        try
        {
            await foreach (Task<TResult> due in underWay.Reader.ReadAllAsync(stop.Token).ConfigureAwait(false))
            {
                stop.Token.ThrowIfCancellationRequested();
                await take(await due.ConfigureAwait(false), stop.Token).ConfigureAwait(false);
            }
        }
        finally
        {
            await stop.CancelAsync().ConfigureAwait(false);
            await feeding.ConfigureAwait(false);
            while (underWay.Reader.TryRead(out Task<TResult>? left))
                await ((Task)left).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }

    /// <summary>Never fails itself: a failure of the row comes out of the channel, after the results before it.</summary>
    private static async Task Feed<TItem, TResult>(
        IAsyncEnumerable<TItem> row,
        Func<TItem, CancellationToken, Task<TResult>> work,
        ChannelWriter<Task<TResult>> underWay,
        CancellationToken stop)
    {
        try
        {
            await foreach (TItem item in row.WithCancellation(stop).ConfigureAwait(false))
            {
                await underWay.WaitToWriteAsync(stop).ConfigureAwait(false);
                await underWay.WriteAsync(Task.Run(() => work(item, stop), stop), stop).ConfigureAwait(false);
            }

            underWay.Complete();
        }
        catch (Exception failure)
        {
            underWay.Complete(failure);
        }
    }
}
