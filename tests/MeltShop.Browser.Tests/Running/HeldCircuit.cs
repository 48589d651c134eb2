using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Running;

/// <summary>The connection of a page's circuit, which can be held up while entries still go their own way. What was said meanwhile comes in its order once it goes on.</summary>
internal sealed class HeldCircuit
{
    /// <summary>Both sides go on saying that they are there (an array of one, the six of a ping, with its length before it): else each gives the other up after half a minute.</summary>
    private static readonly byte[] Ping = [2, 0x91, 6];

    private readonly Lock all = new();
    private readonly Queue<Action> waiting = [];
    private bool isHeld;

    /// <summary>Before the page is opened.</summary>
    public static async Task<HeldCircuit> OfAsync(IPage page)
    {
        var circuit = new HeldCircuit();
        await page.RouteWebSocketAsync(address => address.Contains("_blazor", StringComparison.Ordinal), browser =>
        {
            var program = browser.ConnectToServer();
            browser.OnMessage(frame => circuit.Carry(frame, program));
            program.OnMessage(frame => circuit.Carry(frame, browser));
        });
        return circuit;
    }

    public void Hold()
    {
        lock (all) isHeld = true;
    }

    public void GoOn()
    {
        lock (all)
        {
            isHeld = false;
            while (waiting.TryDequeue(out var say)) say();
        }
    }

    private void Carry(IWebSocketFrame frame, IWebSocketRoute to)
    {
        Action say = frame.Binary is { } bytes ? () => to.Send(bytes) : () => to.Send(frame.Text!);
        lock (all)
        {
            if (isHeld && frame.Binary?.SequenceEqual(Ping) is not true) waiting.Enqueue(say);
            else say();
        }
    }
}
