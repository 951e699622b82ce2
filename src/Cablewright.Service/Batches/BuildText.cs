using Cablewright.Service.Json;

namespace Cablewright.Service.Batches;

/// <summary>One build of a batch as it was sent.</summary>
/// <param name="Line">The line that it stood on, or its place in the array, from 1.</param>
/// <param name="Utf8">Its text; empty where that is too large.</param>
/// <param name="IsTooLarge">Whether it had more bytes than a build may have.</param>
/// <param name="FirstLine">The line that places in its text count from.</param>
internal readonly record struct BuildText(long Line, ReadOnlyMemory<byte> Utf8, bool IsTooLarge, long FirstLine)
{
    /// <summary>A build on a line of its own.</summary>
    public static BuildText OnLine(long line, ReadOnlyMemory<byte> utf8) => new(line, utf8, IsTooLarge: false, line);

    /// <summary>A line with more bytes than a build may have.</summary>
    public static BuildText TooLarge(long line) => new(line, default, IsTooLarge: true, line);

    /// <summary>An item of an array.</summary>
    public static BuildText InArray(int place, ReadOnlyMemory<byte> utf8) =>
        new(place, utf8, utf8.Length > ShapeReader.MostBytes, FirstLine: 1);
}
