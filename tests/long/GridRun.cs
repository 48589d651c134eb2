#pragma warning disable BL0006 // the handlers of a batch are what a test without a browser can press
using System.Diagnostics;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using MudBlazor.Services;

namespace MeltShop.Long;

/// <summary>
/// The grid of burns against the same grid of library fields: what a circuit keeps for it, and how long a committed cell takes to be
/// heard and drawn again.
/// </summary>
internal static class GridRun
{
    private const int Circuits = 20;

    public static async Task<bool> Run()
    {
        await Measure<HouseGrid>(); // the first of each loads code
        await Measure<LibraryGrid>();
        var house = await Measure<HouseGrid>();
        var library = await Measure<LibraryGrid>();
        foreach (var (name, it) in new[] { ("house", house), ("library", library) })
            Console.WriteLine($"{name}: {it.Handlers} cells, {it.KeptKb:0} kB kept a circuit, a committed cell {Middle(it.Milliseconds):0.000} ms (median), {Ninety(it.Milliseconds):0.000} ms (95th percentile)");
        Console.WriteLine($"library / house: memory {library.KeptKb / house.KeptKb:0.0}, time {Middle(library.Milliseconds) / Middle(house.Milliseconds):0.0}");
        return house.Handlers == Cells.All && library.Handlers == Cells.All && house.KeptKb < library.KeptKb && Middle(house.Milliseconds) < Middle(library.Milliseconds);
    }

    private static async Task<(int Handlers, double KeptKb, List<double> Milliseconds)> Measure<TGrid>()
        where TGrid : IComponent
    {
        await using var services = new ServiceCollection().AddLogging().AddMeltShopTexts().AddMudServices().AddSingleton<IJSRuntime, NoBrowser>()
            .AddSingleton<NavigationManager, Nowhere>().BuildServiceProvider();
        var loggers = services.GetRequiredService<ILoggerFactory>();
        var before = Settled();
        var circuits = new List<GridRenderer>();
        for (var number = 0; number < Circuits; number++)
        {
            var circuit = new GridRenderer(services, loggers);
            circuits.Add(circuit);
            await circuit.Draw<TGrid>();
        }

        var kept = (Settled() - before) / 1024.0 / Circuits;
        var (cells, times) = (circuits[0].Changes.Count, new List<double>());
        for (var cell = 0; cell < cells; cell++)
        {
            var started = Stopwatch.GetTimestamp();
            await circuits[0].Commit(circuits[0].Changes[cell % circuits[0].Changes.Count], "3.6");
            times.Add(Stopwatch.GetElapsedTime(started).TotalMilliseconds);
        }

        foreach (var circuit in circuits) await circuit.DisposeAsync();
        return (cells, kept, times);
    }

    private static long Settled()
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        return GC.GetTotalMemory(forceFullCollection: true);
    }

    private static double Middle(List<double> times) => times.Order().ElementAt(times.Count / 2);

    private static double Ninety(List<double> times) => times.Order().ElementAt(times.Count * 95 / 100);
}
