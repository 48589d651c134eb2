using Bunit;
using MeltShop.Charging.Workers;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Yard;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>Whole pieces, whose search may take long: it can be ended by a press.</summary>
[Collection(nameof(Alone))]
public sealed class StopTests : ChargeTest
{
    private readonly string pids = Path.Combine(Path.GetTempPath(), $"meltshop-stop-{Guid.NewGuid():N}");

    [Fact]
    public void Stop_WhileWholePiecesAreSought_EndsTheSearchAndItsProcess()
    {
        // A worker that takes the question and never answers; a busy machine may take longer to press than a search may last in a shop.
        PieceWorkers.Use(new("/bin/sh", "-c", $"echo $$ >> '{pids}'; while read line; do :; done") { MostTime = 10 * Patience });
        var page = Open();
        page.WaitForState(() => File.Exists(pids) && File.ReadAllText(pids).EndsWith('\n'), Patience);
        var worker = int.Parse(File.ReadAllLines(pids)[0], System.Globalization.CultureInfo.InvariantCulture);
        page.Find("[data-testid=stop]").Click();

        page.WaitForAssertion(() => Assert.Contains("Planning was stopped", page.Find("[data-testid=no-plan]").TextContent, StringComparison.Ordinal), Patience);
        page.WaitForState(() => !Directory.Exists($"/proc/{worker}"), Patience);

        PieceWorkers.Use(null);
        page.WaitForElement("[data-testid=again]", Patience).Click();
        WaitForPlan(page);
        Assert.Empty(page.FindAll("[data-testid=again], [data-testid=stop]"));
    }

    [Fact]
    public void Plan_OfWholePieces_SaysThatNoRangeOfPricesCanBeSaid()
    {
        PieceWorkers.Use(null);
        var page = OpenPlanned(Role.Metallurgist);

        Assert.All(page.FindAll("[data-testid=in-plan] .why"), why => Assert.Contains("whole pieces: over which prices the plan is the same cannot be said", why.TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public void Material_LeftOutBesideWholePieces_IsNotSaidToStayOutAtAnyPrice()
    {
        PieceWorkers.Use(null);
        var page = OpenPlanned(Role.Metallurgist);

        Assert.Equal("whole pieces: no single price can be said", page.Find("[data-testid=left-out] [data-material=copper] .why").TextContent);
        Assert.DoesNotContain("at any price", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIf_WhoseSearchTakesLong_CanBeStopped()
    {
        PieceWorkers.Use(null);
        var page = OpenPlanned(Role.Metallurgist);
        PieceWorkers.Use(new("/bin/sh", "-c", "while read line; do :; done") { MostTime = 10 * Patience });
        _ = page.InvokeAsync(() => page.FindAll("[data-testid=what-ifs] button").Single(button => button.TextContent.StartsWith("What if Test ", StringComparison.Ordinal)).ClickAsync()); // held open
        page.WaitForElement("[data-testid=what-ifs] [data-testid=stop]", Patience).Click();

        page.WaitForState(() => page.FindAll("[data-testid=what-ifs] [data-testid=stop], [data-testid=run-out]").Count == 0, Patience);
        Assert.DoesNotContain(page.FindAll("[data-testid=what-ifs] button"), button => button.TextContent.StartsWith("What if ", StringComparison.Ordinal) && button.HasAttribute("disabled"));
    }

    protected override async Task Prepare()
    {
        await base.Prepare();
        var id = (await The<AddMaterial>().Run(Founder, new(
            Guid.NewGuid(), Now, "ingot", "Test ingot", MaterialKind.PigIron, MaterialUses.Charge, 380, 99, [new("C", 4.1), new("Si", 1.1), new("Mn", 0.1)], "Test figures", "memory", PieceKg: 250))).Value;
        await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now, id, StockKind.Counted, 5000));
    }

    protected override void Dispose(bool disposing)
    {
        PieceWorkers.Use(null);
        File.Delete(pids);
        base.Dispose(disposing);
    }
}
