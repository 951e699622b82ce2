using System.Buffers;

namespace Cablewright.Service.Json;

/// <summary>A body read to its end into a rented buffer, which goes back when this is disposed of.</summary>
internal sealed class WholeBody : IDisposable
{
    private const int FirstBuffer = 16_384;

    private readonly int mostBytes;
    private readonly BodyBudget budget;
    private byte[] buffer = [];
    private int length;

    private WholeBody(int mostBytes, BodyBudget budget) => (this.mostBytes, this.budget) = (mostBytes, budget);

    /// <summary>What was read; not to be used once this is disposed of.</summary>
    public ReadOnlyMemory<byte> Bytes => buffer.AsMemory(0, length);

    /// <summary>Reads a stream to its end, or to little more than allowed and then gives <c>null</c>.</summary>
    /// <exception cref="BudgetSpentException">The memory for bodies is taken up.</exception>
    public static async ValueTask<WholeBody?> ReadAsync(
        Stream body, int mostBytes, BodyBudget budget, CancellationToken cancellation)
    {
        var whole = new WholeBody(mostBytes, budget);
        try
        {
            if (await whole.Fill(body, cancellation).ConfigureAwait(false)) return whole;
        }
        catch
        {
            whole.Dispose();
            throw;
        }

        whole.Dispose();
        return null;
    }

    /// <inheritdoc/>
    public void Dispose() => Swap([]);

    private async ValueTask<bool> Fill(Stream body, CancellationToken cancellation)
    {
        Grow(Math.Min(FirstBuffer, mostBytes + 1));
        int got;
        while ((got = await body.ReadAsync(buffer.AsMemory(length), cancellation).ConfigureAwait(false)) > 0)
        {
            length += got;
            if (length > mostBytes) return false;
            if (length == buffer.Length) Grow(2 * buffer.Length);
        }

        return true;
    }

    private void Grow(int bytes)
    {
        byte[] larger = ArrayPool<byte>.Shared.Rent(bytes);
        try
        {
            budget.Take(larger.Length, mostBytes);
        }
        catch
        {
            ArrayPool<byte>.Shared.Return(larger);
            throw;
        }

        buffer.CopyTo(larger, 0);
        Swap(larger);
    }

    private void Swap(byte[] other)
    {
        if (buffer.Length > 0) ArrayPool<byte>.Shared.Return(buffer);
        budget.Give(buffer.Length);
        buffer = other;
        if (other.Length == 0) length = 0;
    }
}
