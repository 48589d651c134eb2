#pragma warning disable BL0006 // as the tablets that it measures
using System.Diagnostics;
using MeltShop.Operations.Ladles;

namespace MeltShop.Long;

/// <summary>
/// Fifty tablets at the page of one ladle, at which two people tick moulds off: how long from a press that reaches the server until the
/// mould is drawn on each tablet. Beside it the same for one tablet: what one page costs.
/// </summary>
internal static class TabletsRun
{
    private const int Tablets = 50, Each = 20;
    private const double AimMilliseconds = 250;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30), Pause = TimeSpan.FromSeconds(1);

    public static async Task<bool> Run()
    {
        await using var shop = await TabletsShop.Open();
        var one = await Measure(shop, 1);
        var all = await Measure(shop, Tablets);
        Console.WriteLine($"1 tablet: {one.Times}, longest {one.Times.Longest:F0} ms");
        Console.WriteLine($"{Tablets} tablets: {all.Times}, longest {all.Times.Longest:F0} ms, of {all.Arrived} arrivals; {all.Batches / (double)Tablets:F1} batches a tablet");
        Console.WriteLine($"aim: p95 of {AimMilliseconds:F0} ms at {Tablets} tablets: {(all.Times.P95 <= AimMilliseconds ? "met" : "not met")}");
        return one.Arrived == 2 * Each && all.Arrived == Tablets * 2 * Each;
    }

    private static async Task<(Timing Times, int Arrived, int Batches)> Measure(TabletsShop shop, int count)
    {
        var ladle = await shop.Ladle();
        var tablets = new List<TabletRenderer>();
        for (var number = 0; number < count; number++)
        {
            var tablet = shop.Tablet();
            await tablet.Open(ladle);
            tablets.Add(tablet);
        }

        var pressed = new Dictionary<string, long>();
        for (var n = 0; n < Each; n++)
        {
            string[] labels = [$"A{n}", $"B{n}"];
            foreach (var label in labels) pressed[label] = Stopwatch.GetTimestamp();
            await Task.WhenAll(labels.Select(label => Task.Run(() => shop.Mould(ladle, label))));
            await Arrival(tablets, labels);
            await Task.Delay(Pause);
        }

        var times = tablets.SelectMany(t => t.Drawn.Select(d => Stopwatch.GetElapsedTime(pressed[d.Key], d.Value).TotalMilliseconds)).ToArray();
        var batches = tablets.Sum(t => t.Batches);
        foreach (var tablet in tablets) await tablet.DisposeAsync();
        return (Timing.Of(times), times.Length, batches);
    }

    private static async Task Arrival(List<TabletRenderer> tablets, string[] labels)
    {
        var started = Stopwatch.GetTimestamp();
        while (!tablets.All(t => labels.All(t.Drawn.ContainsKey)) && Stopwatch.GetElapsedTime(started) < Patience) await Task.Delay(5);
    }
}
