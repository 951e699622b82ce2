using System.Buffers;
using System.IO.Pipelines;
using System.Runtime.CompilerServices;
using Cablewright.Service.Json;

namespace Cablewright.Service.Batches;

/// <summary>
/// Reads builds that stand one a line, as they arrive. Never holds more than one line; reads on only when asked for the next one,
/// so that a slow answer slows the sender down.
/// </summary>
/// <param name="pipe">Where they arrive.</param>
internal sealed class BuildLines(PipeReader pipe)
{
    private const int MostBytes = ShapeReader.MostBytes;

    private long line = 1;
    private bool isSkipping;

    /// <summary>
    /// Every line that is not blank, the last one with or without its end; of one that is too large only that it was.
    /// </summary>
    public async IAsyncEnumerable<BuildText> Read([EnumeratorCancellation] CancellationToken cancellation = default)
    {
        bool isOver;
        do
        {
            ReadResult arrived = await pipe.ReadAsync(cancellation).ConfigureAwait(false);
            isOver = arrived.IsCompleted;
            ReadOnlySequence<byte> rest = arrived.Buffer;
            while (Next(ref rest, isOver) is { } content)
            {
                if (Build(content) is { } build) yield return build;
                line++;
            }

            if (Overflow(ref rest) is { } overflowing) yield return overflowing;
            pipe.AdvanceTo(rest.Start, rest.End);
        }
        while (!isOver);
    }

    /// <summary>Takes the next whole line off what arrived; at the end also one without a line end.</summary>
    private static ReadOnlySequence<byte>? Next(ref ReadOnlySequence<byte> rest, bool isOver)
    {
        if (rest.PositionOf((byte)'\n') is { } end)
        {
            ReadOnlySequence<byte> content = rest.Slice(0, end);
            rest = rest.Slice(rest.GetPosition(1, end));
            return content;
        }

        if (!isOver || rest.IsEmpty) return null;
        ReadOnlySequence<byte> last = rest;
        rest = rest.Slice(rest.End);
        return last;
    }

    private BuildText? Build(ReadOnlySequence<byte> content)
    {
        if (isSkipping)
        {
            isSkipping = false;
            return null;
        }

        if (content.Length > MostBytes + 1) return BuildText.TooLarge(line);
        ReadOnlyMemory<byte> text = content.ToArray();
        if (text.Span.EndsWith("\r"u8)) text = text[..^1];
        if (text.Length > MostBytes) return BuildText.TooLarge(line);
        if (line == 1) text = ShapeReader.WithoutMark(text);
        return text.Span.Trim(" \t\r"u8).IsEmpty ? null : BuildText.OnLine(line, text);
    }

    /// <summary>Drops the start of a line that is already too large, and the rest of it once that arrives.</summary>
    private BuildText? Overflow(ref ReadOnlySequence<byte> rest)
    {
        bool isKnown = isSkipping;
        if (!isKnown && rest.Length <= MostBytes + 1) return null;
        isSkipping = true;
        rest = rest.Slice(rest.End);
        return isKnown ? null : BuildText.TooLarge(line);
    }
}
