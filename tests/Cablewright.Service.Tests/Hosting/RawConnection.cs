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

    /// <summary>
    /// Sends a text, and gives the status and the body of all that is answered until the other side hangs up; 0 where nothing is.
    /// </summary>
    public static async Task<(int Status, string Body)> Send(string address, string text, bool hangsUp = false)
    {
        var uri = new Uri(address);
        using var socket = new TcpClient(uri.Host, uri.Port);
        NetworkStream stream = socket.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(text));
        if (hangsUp) socket.Client.Shutdown(SocketShutdown.Send);
        using var reader = new StreamReader(stream);
        string answer = await reader.ReadToEndAsync().WaitAsync(Patience);
        if (answer.Length == 0) return (0, "");
        string[] parts = answer.Split("\r\n\r\n", 2);
        return (int.Parse(parts[0].Split(' ')[1]), parts[1]);
    }

    /// <summary>The same for an answer that is one problem: its status, and its code.</summary>
    public static async Task<(int Status, string Code)> SendForProblem(string address, string text)
    {
        (int status, string body) = await Send(address, text);
        JsonNode problem = JsonNode.Parse(body)!;
        Assert.Equal(status, (int)problem["status"]!);
        return (status, (string)problem["code"]!);
    }
}
