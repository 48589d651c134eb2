using System.Net;
using System.Net.Sockets;

namespace MeltShop.Browser.Tests.Running;

/// <summary>The cable between a browser and the program, on loopback: it can be cut, or fall silent, and be mended. Other browsers have cables of their own.</summary>
public sealed class Cable : IAsyncDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly List<TcpClient> ends = [];
    private readonly int port;
    private readonly Task accepting;
    private readonly TimeSpan delay;
    private TaskCompletionSource open = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private bool isCut;

    /// <param name="program">Where the cable leads.</param>
    /// <param name="delay">How long it takes each way.</param>
    public Cable(Uri program, TimeSpan delay = default)
    {
        this.delay = delay;
        open.SetResult();
        port = program.Port;
        listener.Start();
        accepting = AcceptAsync();
    }

    /// <summary>What the browser opens.</summary>
    public Uri Address => new($"http://127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}");

    /// <summary>Ends every connection and takes no new one.</summary>
    public void Cut()
    {
        lock (ends)
        {
            isCut = true;
            foreach (var end in ends) end.Dispose();
            ends.Clear();
        }
    }

    /// <summary>Carries nothing any more and ends nothing: neither side is told.</summary>
    public void FallSilent() => open = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public void Mend()
    {
        lock (ends) isCut = false;
        open.TrySetResult();
    }

    public async ValueTask DisposeAsync()
    {
        SignedIn.Forget(Address);
        open.TrySetResult();
        Cut();
        listener.Stop();
        await accepting;
        listener.Dispose();
    }

    private async Task AcceptAsync()
    {
        try
        {
            while (true)
            {
                var browser = await listener.AcceptTcpClientAsync();
                if (!Take(browser)) continue;
                var program = new TcpClient();
                await program.ConnectAsync(IPAddress.Loopback, port);
                if (!Take(program)) continue;
                _ = CarryAsync(browser, program);
                _ = CarryAsync(program, browser);
            }
        }
        catch (Exception end) when (end is SocketException or ObjectDisposedException or InvalidOperationException)
        {
            // the listener was stopped
        }
    }

    private bool Take(TcpClient end)
    {
        lock (ends)
        {
            if (isCut) end.Dispose();
            else ends.Add(end);
            return !isCut;
        }
    }

    private async Task CarryAsync(TcpClient from, TcpClient to)
    {
        try
        {
            if (delay == TimeSpan.Zero) await CarryAtOnceAsync(from.GetStream(), to.GetStream());
            else await SlowWay.CarryAsync(from.GetStream(), to.GetStream(), delay);
        }
        catch (Exception end) when (end is IOException or ObjectDisposedException or InvalidOperationException)
        {
            // cut, or one side hung up
        }

        from.Dispose();
        to.Dispose();
    }

    private async Task CarryAtOnceAsync(NetworkStream from, NetworkStream to)
    {
        var buffer = new byte[64 * 1024];
        while (await from.ReadAsync(buffer) is > 0 and var read)
        {
            await open.Task;
            await to.WriteAsync(buffer.AsMemory(0, read));
        }
    }
}
