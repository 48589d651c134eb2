using System.Globalization;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Running;

/// <summary>
/// With MELTSHOP_LATE_MS each page hears its circuit that much later, while documents and entries go their usual way: what a test does before it has
/// seen what it waits for goes wrong then, as it would once in a hundred runs on a busy machine.
/// </summary>
internal static class LateCircuit
{
    private static readonly TimeSpan Late = TimeSpan.FromMilliseconds(
        double.TryParse(Environment.GetEnvironmentVariable("MELTSHOP_LATE_MS"), CultureInfo.InvariantCulture, out var milliseconds) ? milliseconds : 0);

    public static Task OfAsync(IBrowserContext context) => Late == TimeSpan.Zero ? Task.CompletedTask : context.RouteWebSocketAsync(
        address => address.Contains("_blazor", StringComparison.Ordinal),
        browser =>
        {
            var program = browser.ConnectToServer();
            var last = Task.CompletedTask;
            program.OnMessage(frame =>
            {
                var (before, due) = (last, Task.Delay(Late));
                last = SayAsync();

                async Task SayAsync()
                {
                    await due;
                    await before; // none overtakes another
                    if (frame.Binary is { } bytes) browser.Send(bytes);
                    else browser.Send(frame.Text!);
                }
            });
        });
}
