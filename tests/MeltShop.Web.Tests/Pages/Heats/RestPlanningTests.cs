using Bunit;
using MeltShop.Charging.Workers;
using MeltShop.Operations.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Tests.Pages.Charge;

namespace MeltShop.Web.Tests.Pages.Heats;

/// <summary>A rest with whole pieces, whose search may take long: the page says so, and a later weighing ends it.</summary>
[Collection(nameof(Alone))]
public sealed class RestPlanningTests : HeatTest
{
    private readonly string pids = Path.Combine(Path.GetTempPath(), $"meltshop-rest-{Guid.NewGuid():N}");

    [Fact]
    public async Task Targets_WhileTheRestIsSought_AreMarkedAsThoseOfBeforeAndALaterWeighingEndsTheSearch()
    {
        // A worker that takes the question and never answers.
        PieceWorkers.Use(new("/bin/sh", "-c", $"echo $$ >> '{pids}'; while read line; do :; done") { MostTime = 10 * Patience });
        await WeighIn("steel", 50);
        var page = Open();
        page.WaitForState(() => File.Exists(pids) && File.ReadAllText(pids).EndsWith('\n'), Patience);
        var first = File.ReadAllLines(pids)[0];

        Assert.Contains("these targets are from before", page.Find("[data-testid=rest-planning]").TextContent, StringComparison.Ordinal);
        Assert.Equal("true", page.Find("[data-testid=weighings]").GetAttribute("aria-busy"));

        PieceWorkers.Use(null);
        page.Find("tr[data-material=steel] button").Click();
        Type(page, "weigh-form", "kg", "60");
        await page.Find("[data-testid=weigh-form]").SubmitAsync();

        page.WaitForState(() => page.FindAll("[data-testid=rest]").Count > 0, Patience);
        Assert.Empty(page.FindAll("[data-testid=rest-planning]"));
        page.WaitForState(() => !Directory.Exists($"/proc/{first}"), Patience);
    }

    protected override async Task Prepare()
    {
        PieceWorkers.Use(null);
        await base.Prepare();
    }

    protected override async Task Furnish()
    {
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
