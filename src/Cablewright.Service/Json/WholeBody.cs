using System.Buffers;

namespace Cablewright.Service.Json;

/// <summary>A body read to its end into a rented buffer, which goes back when this is disposed of.</summary>
internal sealed class WholeBody : IDisposable
{
    private const int FirstBuffer = 16_384;

    private byte[] buffer;
    private int length;

    private WholeBody(int mostBytes) => buffer = ArrayPool<byte>.Shared.Rent(Math.Min(FirstBuffer, mostBytes + 1));

    /// <summary>What was read; not to be used once this is disposed of.</summary>
    public ReadOnlyMemory<byte> Bytes => buffer.AsMemory(0, length);

    /// <summary>Reads a stream to its end, or to little more than allowed and then gives <c>null</c>.</summary>
    public static async ValueTask<WholeBody?> ReadAsync(Stream body, int mostBytes, CancellationToken cancellation)
    {
        var whole = new WholeBody(mostBytes);
        try
        {
            if (await whole.Fill(body, mostBytes, cancellation).ConfigureAwait(false)) return whole;
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
    public void Dispose()
    {
        if (buffer.Length > 0) ArrayPool<byte>.Shared.Return(buffer);
        (buffer, length) = ([], 0);
    }

    private async ValueTask<bool> Fill(Stream body, int mostBytes, CancellationToken cancellation)
    {
        int got;
        while ((got = await body.ReadAsync(buffer.AsMemory(length), cancellation).ConfigureAwait(false)) > 0)
        {
            length += got;
            if (length > mostBytes) return false;
            if (length == buffer.Length) Grow();
        }

        return true;
    }

    private void Grow()
    {
        byte[] larger = ArrayPool<byte>.Shared.Rent(2 * buffer.Length);
        buffer.CopyTo(larger, 0);
        ArrayPool<byte>.Shared.Return(buffer);
        buffer = larger;
    }
}
