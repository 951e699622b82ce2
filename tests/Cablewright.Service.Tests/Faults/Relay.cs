using System.Net;
using System.Net.Sockets;

namespace Cablewright.Service.Tests.Faults;

/// <summary>Passes connections on to another port of this machine, but for as long as it is cut or frozen.</summary>
public sealed class Relay : IAsyncDisposable
{
    private readonly string host;
    private readonly int port;
    private readonly List<TcpClient> open = [];
    private TcpListener listener;
    private TaskCompletionSource running = Running();

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

    /// <summary>Keeps every connection and takes new ones, and passes nothing on.</summary>
    public void Freeze() => running = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);

    public void Thaw() => running.TrySetResult();

    public void Mend(int samePort) => listener = Listen(samePort);

    public ValueTask DisposeAsync()
    {
        Cut();
        Thaw();
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

    private static TaskCompletionSource Running()
    {
        var running = new TaskCompletionSource();
        running.SetResult();
        return running;
    }

    private async Task Pass(TcpClient from, TcpClient to)
    {
        var bytes = new byte[16 * 1024];
        try
        {
            for (int read = 1; read > 0;)
            {
                read = await from.GetStream().ReadAsync(bytes);
                await running.Task;
                await to.GetStream().WriteAsync(bytes.AsMemory(0, read));
            }
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
