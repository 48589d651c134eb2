using System.Net;
using System.Text;
using MeltShop.Charging;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Workers;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Web.Api.Answering;
using MeltShop.Web.Tests.Pages.Charge;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Api;

/// <summary>Machines that ask for whole pieces, whose search takes its time, hold up neither light questions nor a person at the page.</summary>
[Collection(nameof(Alone))]
public sealed class SeatsTests(WebApp app) : IClassFixture<WebApp>, IDisposable
{
    private static readonly string Pieces = Bodies.With(Bodies.With(Bodies.Charge, "materials[0].pieceKg", "25"), "meltToleranceKg", "50");

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("seats");

    private string Started => Path.Combine(folder.FullName, "started");

    [Fact]
    public async Task Pieces_InEverySeatOfMachines_LeaveRoomForLightQuestionsAndForAPage()
    {
        using var machine = await app.CreateMachineAsync();
        // A worker that takes its question and thinks; the app itself, which says at its start what its workers are, is there.
        PieceWorkers.Use(new("/bin/sh", "-c", $"echo $$ >> {Started}; read line; exec sleep 3600") { MostTime = TimeSpan.FromHours(1) });
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        var hard = Enumerable.Range(0, Environment.ProcessorCount + 2).Select(_ => SendAsync(machine, stop.Token)).ToList();
        await Workers(1);

        await machine.AskAsync("analysis", Bodies.Analysis);
        Assert.Equal("optimal", (await machine.AskAsync("charge", Bodies.Charge)).GetProperty("status").GetString());
        Assert.Equal("optimal", (await machine.AskAsync("correction", Bodies.Correction)).GetProperty("status").GetString());
        Assert.DoesNotContain(hard, question => question.IsCompleted);

        var before = Seats.Pieces - 1;
        await Workers(before);
        await Task.Delay(100, TestContext.Current.CancellationToken); // where nothing bounds them, the other machines come in now
        Assert.Equal(before, (await File.ReadAllLinesAsync(Started, TestContext.Current.CancellationToken)).Length);
        var page = Task.Run(() => ChargeOptimiser.Plan(Problem, stop.Token), TestContext.Current.CancellationToken);
        await Workers(before + 1);
        Assert.DoesNotContain(hard, question => question.IsCompleted);

        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => page);
        foreach (var question in hard) await Assert.ThrowsAnyAsync<OperationCanceledException>(() => question);
    }

    [Fact]
    public async Task Question_ThatWaitsForASeat_WaitsWithinItsTime()
    {
        using var bounds = new CalculationBounds();
        for (var seat = 1; seat < Seats.Pieces; seat++) Assert.True((await bounds.SeatAsync(Problem, TestContext.Current.CancellationToken))!.IsAcquired);
        using var time = new CancellationTokenSource();

        var waiting = bounds.SeatAsync(Problem, time.Token).AsTask();
        Assert.False(waiting.IsCompleted);
        await time.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting);
        Assert.True((await bounds.SeatAsync(Problem with { Materials = [Material("b", 400, 2)] }, TestContext.Current.CancellationToken))!.IsAcquired);
        Assert.Null(await bounds.SeatAsync("an analysis", TestContext.Current.CancellationToken));
    }

    public void Dispose()
    {
        PieceWorkers.Use(null);
        folder.Delete(recursive: true);
    }

    private static ChargeProblem Problem => new()
    {
        MeltKg = 1000, MeltToleranceKg = 50, Limits = [new(LinearQuantity.Of(Element.Si), 1.5, 1.7)],
        Materials = [Material("a", 300, 1) with { PieceKg = 130 }, Material("b", 400, 2)],
    };

    private static ChargeMaterial Material(string code, double price, double silicon) => new()
    {
        Code = code, PricePerTonne = price, Composition = new MaterialComposition { Analysis = Analysis.Of((Element.Si, silicon)) },
    };

    private static async Task<HttpStatusCode> SendAsync(HttpClient machine, CancellationToken stop)
    {
        using var body = new StringContent(Pieces, Encoding.UTF8, "application/json");
        using var answer = await machine.PostAsync(new Uri("/api/v1/calculations/charge", UriKind.Relative), body, stop);
        return answer.StatusCode;
    }

    private async Task Workers(int number)
    {
        while (!File.Exists(Started) || (await File.ReadAllLinesAsync(Started, TestContext.Current.CancellationToken)).Length < number)
            await Task.Delay(20, TestContext.Current.CancellationToken);
    }
}
