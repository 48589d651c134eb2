using Bunit;
using MeltShop.Records;
using MeltShop.Records.Heats;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Tests.Pages.Charge;

public sealed class StartingTests : ChargeTest
{
    [Fact]
    public async Task Heat_Started_GetsItsNumberAndItsPageOpens()
    {
        var page = OpenPlanned();
        Press(page, "Start the heat");
        page.WaitForAssertion(() => Assert.Contains("gets its number for good", page.Find("[data-testid=start-ask]").TextContent, StringComparison.Ordinal), Patience);
        Press(page, "Yes, start the heat");

        page.WaitForAssertion(() => Assert.Contains("/heats/", Addresses.Uri, StringComparison.Ordinal), Patience);
        var heat = Assert.Single(await Heats());
        Assert.EndsWith($"/heats/{heat.Id}", Addresses.Uri, StringComparison.Ordinal);
        Assert.Equal((FurnaceId, GradeId, HeatState.Charging), (heat.FurnaceId, heat.GradeId, heat.State));
    }

    [Fact]
    public async Task Start_NotConfirmed_StartsNothing()
    {
        var page = OpenPlanned();
        Press(page, "Start the heat");
        Press(page, "Not yet");

        page.WaitForState(() => page.FindAll("[data-testid=start-ask]").Count == 0, Patience);
        Assert.Empty(await Heats());
    }

    [Fact]
    public async Task Plan_KeptTwice_IsKeptOnce()
    {
        var page = OpenPlanned();
        Press(page, "Keep the plan");
        page.WaitForState(() => page.FindAll("[data-testid=kept]").Count > 0, Patience);
        Press(page, "Start the heat");
        Press(page, "Yes, start the heat");
        page.WaitForAssertion(() => Assert.Contains("/heats/", Addresses.Uri, StringComparison.Ordinal), Patience);

        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        Assert.Equal(1, await db.Plans.CountAsync(Cancellation));
    }

    [Fact]
    public async Task Furnace_WithAHeatInIt_AsksForTheHeelAndRefusesAnotherStart()
    {
        var first = OpenPlanned();
        Press(first, "Start the heat");
        Press(first, "Yes, start the heat");
        first.WaitForAssertion(() => Assert.Contains("/heats/", Addresses.Uri, StringComparison.Ordinal), Patience);
        var number = Assert.Single(await Heats()).Number;

        var page = Open();
        page.WaitForAssertion(() => Assert.Equal("heel.unknown", Field(page, "heelKg").QuerySelector(".field-error")!.GetAttribute("data-code")), Patience);
        Assert.Contains($"heat {number} is in this furnace", page.Find("[data-testid=heel]").TextContent, StringComparison.Ordinal);
        Type(page, "heelKg", "300");
        WaitForPlan(page);
        Assert.Contains("Not measured in the heel", page.Find("[data-testid=assumed-zero]").TextContent, StringComparison.Ordinal);
        Press(page, "Start the heat");
        Press(page, "Yes, start the heat");

        page.WaitForAssertion(() => Assert.Equal("furnace.busy", page.Find("[data-testid=findings] li").GetAttribute("data-code")), Patience);
        Assert.Single(await Heats());
    }

    private async Task<List<Heat>> Heats()
    {
        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        return await db.Heats.ToListAsync(Cancellation);
    }
}
