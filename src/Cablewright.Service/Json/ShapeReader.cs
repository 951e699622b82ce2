using System.Buffers;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Cablewright.Contract;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Json;

/// <summary>
/// Reads a JSON body strictly: nothing unknown, nothing twice, no null, no lenient conversion. Every fault of the shape is found
/// in one reading. Nothing that a caller sends makes it throw.
/// </summary>
public static class ShapeReader
{
    /// <summary>The most bytes of a body, and of one line of a batch: 256 KB.</summary>
    public const int MostBytes = ContractLimits.BodyBytes;

    /// <summary>The most arrays and objects within one another.</summary>
    public const int MostDepth = ContractLimits.JsonDepth;

    /// <summary>The most faults that are listed.</summary>
    public const int MostFaults = 100;

    private const int FirstBuffer = 16_384;

    /// <summary>Makes a type's shape, and the table of units, at start-up: UnitsNet takes a third of a second to load.</summary>
    /// <exception cref="NotSupportedException">The type holds something that no request may hold.</exception>
    public static void Prepare(JsonTypeInfo type) => Shapes.Of(type);

    /// <summary>Reads a request's body. Its <c>Content-Type</c> is for the endpoint: see <see cref="JsonMediaType"/>.</summary>
    public static ValueTask<Shaped<T>> ReadAsync<T>(
        HttpRequest request, JsonTypeInfo<T> type, int mostBytes = MostBytes, CancellationToken cancellation = default)
        where T : class =>
        request.ContentLength > mostBytes ? new(TooLarge<T>(mostBytes)) : ReadAsync(request.Body, type, mostBytes, cancellation);

    /// <summary>Reads a stream to its end, or to one byte more than allowed.</summary>
    public static async ValueTask<Shaped<T>> ReadAsync<T>(
        Stream body, JsonTypeInfo<T> type, int mostBytes = MostBytes, CancellationToken cancellation = default) where T : class
    {
        byte[] buffer = ArrayPool<byte>.Shared.Rent(Math.Min(FirstBuffer, mostBytes + 1));
        try
        {
            int length = 0, got;
            while ((got = await body.ReadAsync(buffer.AsMemory(length), cancellation).ConfigureAwait(false)) > 0)
            {
                length += got;
                if (length > mostBytes) return TooLarge<T>(mostBytes);
                if (length == buffer.Length) buffer = Grow(buffer);
            }

            return Read(buffer.AsMemory(0, length), type);
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }

    /// <summary>Reads a body that is in memory, such as one line of a batch.</summary>
    public static Shaped<T> Read<T>(ReadOnlyMemory<byte> utf8, JsonTypeInfo<T> type) where T : class
    {
        ReadOnlyMemory<byte> text = utf8.Span.StartsWith("\ufeff"u8) ? utf8[3..] : utf8;
        if (JsonSyntax.Fault(text, MostDepth, out JsonDocument? document) is { } fault)
            return new(ShapeOutcome.NotJson, null, [fault]);
        using (document)
        {
            IReadOnlyList<Fault> faults = Faults(document!.RootElement, Shapes.Of(type));
            return faults.Count > 0
                ? new(ShapeOutcome.WrongShape, null, faults)
                : new(ShapeOutcome.Read, document.RootElement.Deserialize(type), faults);
        }
    }

    /// <summary>With a fault there is no value for the validators, so that its quantities are read here and listed too.</summary>
    private static IReadOnlyList<Fault> Faults(JsonElement root, Shape shape)
    {
        Walk search = new(most: 0, readsQuantities: false);
        shape.Check(root, search);
        if (!search.IsOver) return [];
        Walk listing = new(MostFaults, readsQuantities: true);
        shape.Check(root, listing);
        return listing.Faults;
    }

    private static byte[] Grow(byte[] buffer)
    {
        byte[] larger = ArrayPool<byte>.Shared.Rent(2 * buffer.Length);
        buffer.CopyTo(larger, 0);
        ArrayPool<byte>.Shared.Return(buffer);
        return larger;
    }

    private static Shaped<T> TooLarge<T>(int mostBytes) where T : class => new(
        ShapeOutcome.TooLarge,
        null,
        [new Fault("", ShapeCodes.TooLarge, $"the body has more than {mostBytes} bytes", null, $"at most {mostBytes} bytes")]);
}
