using System.Threading.Channels;

namespace MeltShop.Browser.Tests.Running;

/// <summary>One direction of a cable that is long: every byte arrives later, and none waits for another.</summary>
internal static class SlowWay
{
    public static async Task CarryAsync(Stream from, Stream to, TimeSpan delay)
    {
        var way = Channel.CreateUnbounded<(DateTimeOffset Due, byte[] Bytes)>();
        var arriving = ArriveAsync(way.Reader, to);
        var buffer = new byte[64 * 1024];
        try
        {
            while (await from.ReadAsync(buffer) is > 0 and var read) await way.Writer.WriteAsync((TimeProvider.System.GetUtcNow() + delay, buffer[..read]));
        }
        finally
        {
            way.Writer.Complete();
        }

        await arriving;
    }

    private static async Task ArriveAsync(ChannelReader<(DateTimeOffset Due, byte[] Bytes)> way, Stream to)
    {
        await foreach (var (due, bytes) in way.ReadAllAsync())
        {
            var left = due - TimeProvider.System.GetUtcNow();
            if (left > TimeSpan.Zero) await Task.Delay(left);
            await to.WriteAsync(bytes);
        }
    }
}
