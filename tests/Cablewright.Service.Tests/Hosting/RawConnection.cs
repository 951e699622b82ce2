using System.Net.Sockets;
using System.Text;
using System.Text.Json.Nodes;

namespace Cablewright.Service.Tests.Hosting;

/// <summary>One connection on which anything can be sent, right or wrong.</summary>
public static class RawConnection
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>A POST as far as the end of its headers, and what comes after.</summary>
    public static string Post(string path, string header, string rest, string contentType = "application/json") =>
        $"POST {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: {contentType}\r\n{header}\r\n\r\n{rest}";

    /// <summary>Sends a text and hangs up.</summary>
    public static async Task SendAndHangUp(string address, string text)
    {
        var uri = new Uri(address);
        using var socket = new TcpClient(uri.Host, uri.Port);
        await socket.GetStream().WriteAsync(Encoding.ASCII.GetBytes(text));
    }

    /// <summary>Sends a text, and gives the status and the body of all that is answered until the other side hangs up.</summary>
    public static async Task<(int Status, string Body)> Send(string address, string text)
    {
        var uri = new Uri(address);
        using var socket = new TcpClient(uri.Host, uri.Port);
        await socket.GetStream().WriteAsync(Encoding.ASCII.GetBytes(text));
        using var reader = new StreamReader(socket.GetStream());
        string[] parts = (await reader.ReadToEndAsync().WaitAsync(Patience)).Split("\r\n\r\n", 2);
        return (StatusOf(parts[0]), parts[1]);
    }

    /// <summary>Sends a text, and gives the status and the headers of the answer as soon as they are there.</summary>
    public static async Task<(int Status, string Head)> SendForHead(string address, string text)
    {
        var uri = new Uri(address);
        using var socket = new TcpClient(uri.Host, uri.Port);
        await socket.GetStream().WriteAsync(Encoding.ASCII.GetBytes(text));
        using var reader = new StreamReader(socket.GetStream());
        var head = new StringBuilder();
        while (await reader.ReadLineAsync().WaitAsync(Patience) is { Length: > 0 } line) head.Append(line).Append("\r\n");
        return (StatusOf(head.ToString()), head.ToString());
    }

    /// <summary>The same for an answer that is one problem: its status, and its code.</summary>
    public static async Task<(int Status, string Code)> SendForProblem(string address, string text)
    {
        (int status, string body) = await Send(address, text);
        JsonNode problem = JsonNode.Parse(body)!;
        Assert.Equal(status, (int)problem["status"]!);
        return (status, (string)problem["code"]!);
    }

    private static int StatusOf(string head) => int.Parse(head.Split(' ')[1]);
}
