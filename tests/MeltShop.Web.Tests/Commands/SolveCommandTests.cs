using System.Diagnostics;
using System.Net;
using System.Text.Json;
using MeltShop.Charging.Workers;
using MeltShop.Web.Composition;
using MeltShop.Web.Tests.Api;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Commands;

/// <summary>The worker process, started by the program that serves.</summary>
public sealed class SolveCommandTests(WebApp app) : IClassFixture<WebApp>
{
    [Fact]
    public void Command_NamesAProgramThatIsThere()
    {
        Assert.True(File.Exists(Solvers.Command.File));
        Assert.Equal("solve", Solvers.Command.Arguments[^1]);
    }

    [Fact]
    public async Task Charge_WithPieces_IsSolvedByTheWorkerToAProof()
    {
        using var client = await app.CreateMachineAsync();
        PieceWorkers.Use(Solvers.Command with { MostTime = TimeSpan.FromMinutes(10) }); // a busy machine starts the worker later

        using var response = await client.SendJsonAsync("charge", Bodies.With(Bodies.With(Bodies.Charge, "materials[0].pieceKg", "25"), "meltToleranceKg", "50"));
        using var answer = JsonDocument.Parse(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        // Were there no worker, the answer would be timeLimit.
        Assert.Equal("optimal", answer.RootElement.GetProperty("status").GetString());
    }

    [Fact]
    public async Task Solve_WhenItsInputEnds_EndsWithZeroAndHasSaidNothing()
    {
        var start = new ProcessStartInfo(Solvers.Command.File, Solvers.Command.Arguments) { RedirectStandardInput = true, RedirectStandardOutput = true };
        using var worker = Process.Start(start)!;
        worker.StandardInput.Close();

        var output = await worker.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await worker.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.Equal((0, ""), (worker.ExitCode, output));
    }
}
