using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Cablewright.Contract;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Json;

/// <summary>
/// Reads a JSON body strictly: nothing unknown, nothing twice, no lenient conversion, <c>null</c> only for a member that may be
/// left out. Every fault of the shape is found in one reading. Nothing that a caller sends makes it throw.
/// </summary>
public static class ShapeReader
{
    /// <summary>The most bytes of a body, and of one line of a batch: 256 KB.</summary>
    public const int MostBytes = ContractLimits.BodyBytes;

    /// <summary>The most arrays and objects within one another.</summary>
    public const int MostDepth = ContractLimits.JsonDepth;

    /// <summary>The most faults that are listed.</summary>
    public const int MostFaults = 100;

    /// <summary>Makes a type's shape, and the table of units, at start-up: UnitsNet takes a third of a second to load.</summary>
    /// <exception cref="NotSupportedException">The type holds something that no request may hold.</exception>
    public static void Prepare(JsonTypeInfo type) => Shapes.Of(type);

    /// <summary>Reads a body that is in memory, or one line of a batch.</summary>
    /// <param name="utf8">The body.</param>
    /// <param name="type">The contract's type.</param>
    /// <param name="firstLine">The number of its first line, for the places that faults name.</param>
    public static Shaped<T> Read<T>(ReadOnlyMemory<byte> utf8, JsonTypeInfo<T> type, long firstLine = 1) where T : class
    {
        ReadOnlyMemory<byte> text = WithoutMark(utf8);
        if (JsonSyntax.Fault(text, MostDepth, out JsonDocument? document, firstLine) is { } fault)
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

    /// <summary>The text without the byte order mark that some programs begin a file with.</summary>
    internal static ReadOnlyMemory<byte> WithoutMark(ReadOnlyMemory<byte> utf8) =>
        utf8.Span.StartsWith("\ufeff"u8) ? utf8[3..] : utf8;

    /// <summary>The reading of a body that has more bytes than allowed.</summary>
    internal static Shaped<T> TooLarge<T>(int mostBytes, string what = "body") where T : class => new(
        ShapeOutcome.TooLarge,
        null,
        [new Fault("", ShapeCodes.TooLarge, $"the {what} has more than {mostBytes} bytes", null, $"at most {mostBytes} bytes")]);
}
