using System.Globalization;
using System.Net.Sockets;
using System.Text;

namespace Cablewright.Service.Tests.Batches;

/// <summary>
/// A batch whose lines are sent one by one while its answers are read: HTTP/1.1 in chunks (RFC 9112, 7.1) over a bare socket,
/// since HttpClient sends a whole body before it reads.
/// </summary>
public sealed class Conversation : IDisposable
{
    private readonly TcpClient socket;
    private readonly NetworkStream stream;
    private readonly MemoryStream heard = new();
    private bool isPastHead;

    public Conversation(string address, string correlationId, string acceptEncoding = "identity")
    {
        var uri = new Uri(address);
        socket = new TcpClient(uri.Host, uri.Port);
        stream = socket.GetStream();
        stream.Write(Encoding.ASCII.GetBytes(
            $"POST /v1/assessments/batch HTTP/1.1\r\nHost: {uri.Authority}\r\nContent-Type: application/x-ndjson\r\n"
            + $"X-Correlation-Id: {correlationId}\r\nAccept-Encoding: {acceptEncoding}\r\nTransfer-Encoding: chunked\r\n\r\n"));
    }

    public async Task Say(string line)
    {
        byte[] text = Encoding.UTF8.GetBytes(line + "\n");
        await stream.WriteAsync(Encoding.ASCII.GetBytes($"{text.Length:x}\r\n"));
        await stream.WriteAsync(text);
        await stream.WriteAsync("\r\n"u8.ToArray());
    }

    /// <summary>Sends what may be no chunk at all.</summary>
    public async Task SayRaw(string text) => await stream.WriteAsync(Encoding.ASCII.GetBytes(text));

    public async Task Finish() => await stream.WriteAsync("0\r\n\r\n"u8.ToArray());

    /// <summary>The next line of the answer; <c>null</c> at its end.</summary>
    public async Task<string?> Hear()
    {
        while (!heard.GetBuffer().AsSpan(0, (int)heard.Length).Contains((byte)'\n'))
        {
            byte[] chunk = await HearChunk();
            if (chunk.Length == 0) return null;
            heard.Write(chunk);
        }

        byte[] all = heard.ToArray();
        int end = Array.IndexOf(all, (byte)'\n');
        heard.SetLength(0);
        heard.Write(all.AsSpan(end + 1));
        return Encoding.UTF8.GetString(all, 0, end);
    }

    /// <summary>The next bytes of the answer as they are sent; none at its end.</summary>
    public async Task<byte[]> HearChunk()
    {
        if (!isPastHead) Assert.StartsWith("HTTP/1.1 200 ", await Line());
        while (!isPastHead) isPastHead = (await Line()).Length == 0;
        byte[] chunk = new byte[int.Parse(await Line(), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture)];
        await stream.ReadExactlyAsync(chunk);
        Assert.Equal("", await Line());
        return chunk;
    }

    /// <summary>Gives up the connection.</summary>
    public void Dispose()
    {
        socket.Dispose();
        heard.Dispose();
    }

    private async Task<string> Line()
    {
        var line = new StringBuilder();
        byte[] one = new byte[1];
        do
        {
            await stream.ReadExactlyAsync(one);
            line.Append((char)one[0]);
        }
        while (one[0] != '\n');
        return line.ToString().TrimEnd('\r', '\n');
    }
}
