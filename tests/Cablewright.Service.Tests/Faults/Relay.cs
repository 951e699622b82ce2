using System.Net;
using System.Net.Sockets;

namespace Cablewright.Service.Tests.Faults;

/// <summary>Passes connections on to another port of this machine, until it is cut, and again once it is mended.</summary>
public sealed class Relay : IAsyncDisposable
{
    private readonly string host;
    private readonly int port;
    private readonly List<TcpClient> open = [];
    private TcpListener listener;

    public Relay(string host, int port)
    {
        (this.host, this.port) = (host, port);
        listener = Listen(0);
    }

    public int Port => ((IPEndPoint)listener.LocalEndpoint).Port;

    /// <summary>Breaks every connection and refuses new ones.</summary>
    public void Cut()
    {
        listener.Stop();
        lock (open)
        {
            foreach (TcpClient client in open) client.Dispose();
            open.Clear();
        }
    }

    public void Mend(int samePort) => listener = Listen(samePort);

    public ValueTask DisposeAsync()
    {
        Cut();
        listener.Dispose();
        return ValueTask.CompletedTask;
    }

    private TcpListener Listen(int at)
    {
        var started = new TcpListener(IPAddress.Loopback, at);
        started.Start();
        _ = Accept(started);
        return started;
    }

    private async Task Accept(TcpListener from)
    {
        try
        {
            while (true)
            {
                TcpClient near = await from.AcceptTcpClientAsync(), far = new();
                lock (open) open.AddRange([near, far]);
                await far.ConnectAsync(host, port);
                _ = Pass(near, far);
                _ = Pass(far, near);
            }
        }
        catch (Exception stopped) when (stopped is SocketException or ObjectDisposedException)
        {
            // Cut.
        }
    }

    private static async Task Pass(TcpClient from, TcpClient to)
    {
        try
        {
            await from.GetStream().CopyToAsync(to.GetStream());
        }
        catch (Exception broken) when (broken is IOException or ObjectDisposedException or InvalidOperationException)
        {
            // Cut.
        }
        finally
        {
            from.Dispose();
            to.Dispose();
        }
    }
}
