using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Workers;

/// <summary>So many solves at once as there are seats.</summary>
[Collection(nameof(Alone))]
public sealed class SeatTests
{
    [Fact]
    public void Seats_OnAnyMachine_AreOneMoreThanCoresAndForPiecesOneFewerButTwo()
    {
        Assert.True(Seats.Plain > Environment.ProcessorCount && Seats.Plain >= 3, $"{Seats.Plain}");
        Assert.InRange(Seats.Pieces, 2, Math.Max(2, Environment.ProcessorCount - 1));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Solves_MoreThanThereAreSeats_WaitAndCanBeCalledOff(bool arePieces)
    {
        var melt = ChargeOptimiser.MeltOf(new ChargeProblem { MeltKg = 1000, Limits = [], Materials = [Material("a", 300, (Element.Si, 1)) with { PieceKg = arePieces ? 100 : null }] });
        var seats = arePieces ? Seats.Pieces : Seats.Plain;
        using var gate = new ManualResetEventSlim();
        using var inside = new SemaphoreSlim(0);
        using var stop = new CancellationTokenSource();
        var all = Enumerable.Range(0, seats + 3).Select(_ => InTurn(() =>
        {
            inside.Release();
            gate.Wait(CancellationToken.None);
        }, CancellationToken.None)).ToList();
        for (var seat = 0; seat < seats; seat++) await inside.WaitAsync(TestContext.Current.CancellationToken);
        var waiting = InTurn(() => inside.Release(), stop.Token);
        await Task.Delay(100, TestContext.Current.CancellationToken); // where nothing bounds them, the others come in now

        Assert.Equal(0, inside.CurrentCount);
        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting);
        gate.Set();
        await Task.WhenAll(all); // who waits comes in once another has left

        Task InTurn(Action solve, CancellationToken cancellation) => Task.Factory.StartNew(
            () => MeltPlanner.InTurn(melt, (_, _) =>
            {
                solve();
                return 0;
            }, cancellation), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
    }
}
