using Bunit;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Yard;
using MeltShop.Records.Heats;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Pages.Heats;

namespace MeltShop.Web.Tests.Pages.Heats;

/// <summary>What is asked for where the rest of a charge was not planned anew.</summary>
public sealed class FirstPlanTests : HeatTest
{
    /// <summary>The first plan knows neither what is in nor how much room it has left: its masses are shown as what they were, and none is asked for.</summary>
    [Fact]
    public async Task Rest_ThatCannotBeReckoned_AsksForNothingAndStillTakesWhatIsCharged()
    {
        await Add("unknown", MaterialKind.CastScrap, 200, 95, new MaterialPercentInput("C", 3));
        await Forget("unknown");
        foreach (var (code, kg) in new[] { ("pig", 1500), ("pig", 1600), ("unknown", 1) }) await WeighIn(code, kg);
        var page = Open();
        page.WaitForState(() => page.FindAll("[data-testid=rest][data-standing=Unknown]").Count > 0, Patience);

        Assert.DoesNotContain("still ", page.Find("[data-testid=weighings] tbody").TextContent, StringComparison.Ordinal);
        Assert.Matches("no target\\s*first [0-9]+\u00a0kg", page.Find("tr[data-material=steel]").TextContent);
        Assert.Equal(["over", "stopped"], page.FindAll("[data-testid=weighings] [data-standing]").Select(cell => cell.GetAttribute("data-standing")).Distinct().Order());
        Assert.Matches("Overfilling: 30[0-9][0-9]\u00a0kg of liquid are in, and the furnace holds 3000\u00a0kg", page.Find("[data-testid=overfull]").TextContent);

        page.Find("tr[data-material=steel] button").Click();
        Type(page, "weigh-form", "kg", "50");
        await page.Find("[data-testid=weigh-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=weighed]").Count > 0, Patience);
        Assert.Equal(50, (await Heat()).Weighings[^1].Kg);

        var sheet = Render<WeighingSheet>(parameters => parameters.Add(p => p.HeatId, HeatId));
        sheet.WaitForState(() => sheet.FindAll("[data-testid=rest]").Count > 0, Patience);
        Assert.Matches("■ Stop, and ask the metallurgist: 3[0-9]{3}\u00a0kg are in the furnace, which holds 3000\u00a0kg", sheet.Find("[data-testid=loading-closed]").TextContent);
        Assert.Empty(sheet.FindAll("[data-testid=loading-now], [aria-current=step], [data-standing=Next]"));
    }

    /// <summary>A page that is loaded anew knows only the first plan until the rest is planned: an alarm says nothing yet, and neither does a mass that may be too much.</summary>
    [Theory]
    [InlineData("copper", 10, "stopped", "until then there are no targets")]
    [InlineData("steel", 50, "open", "these targets are from before")]
    public async Task Card_BeforeTheRestIsKnown_AsksForTheFirstPlanOnlyWhereTheChargeFollowsIt(string code, double kg, string standing, string words)
    {
        SignIn(Role.Melter);
        await WeighIn(code, kg);
        var (heat, yard) = (await Heat(), (await The<YardPage>().Load(null, Cancellation)).Materials);
        using var weighings = new HeldWeighings(heat.Weighings);
        var card = Render<WeighInCard>(parameters => parameters.Add(c => c.Screen, new(heat with { Weighings = weighings }, yard)).Add(c => c.IsOffered, true));
        await weighings.Asked.WaitAsync(Patience, Cancellation);

        Assert.Equal(standing, card.Find("tr[data-material=pig] [data-standing]").GetAttribute("data-standing"));
        Assert.Equal(standing == "open", card.Find("tr[data-material=pig]").TextContent.Contains("still ", StringComparison.Ordinal));
        Assert.Contains(words, card.Find("[data-testid=rest-planning]").TextContent, StringComparison.Ordinal);
        Assert.Empty(card.FindAll("[role=alert], [data-testid=rest]"));
        weighings.LetGo();

        card.WaitForState(() => card.FindAll("[data-testid=rest]").Count > 0, Patience);
        Assert.Equal("open", card.Find("tr[data-material=pig] [data-standing]").GetAttribute("data-standing"));
        Assert.NotEmpty(card.FindAll("[data-testid=weighings] tr.chosen"));
    }

    /// <summary>Shares of what the plan wants of each; 20 kg in 2000 are near enough.</summary>
    [Theory]
    [InlineData(0, 0, true)]
    [InlineData(0.5, 0, true)]
    [InlineData(1, 1, true)]
    [InlineData(1.009, 0.5, true)]
    [InlineData(1.02, 0, false)]
    [InlineData(0.5, 1.02, false)]
    public async Task FirstPlan_WhereNoRestWasPlanned_StandsWhileWhatIsInFollowsIt(double steel, double pig, bool stands)
    {
        var rows = WeighingRow.Of(await Heat(), []);
        foreach (var (code, share) in new[] { ("steel", steel), ("pig", pig) })
            if (share > 0) await WeighIn(code, share * rows.Single(row => row.Code == code).TargetKg);

        Assert.Equal(stands, FirstPlan.StillStands(await Heat()));
        Assert.Equal(!stands, FirstPlan.IsStopped(await Heat(), new(RestStanding.None, null)));
        Assert.Equal(!stands, FirstPlan.IsStopped(await Heat(), null, hasFailed: true));
        Assert.False(FirstPlan.IsStopped(await Heat(), null));
    }

    /// <summary>A scale may say so, and a heat whose only coin was another's is charged again: it is in, and not asked for twice.</summary>
    [Fact]
    public async Task Row_OfWhatWentIntoTheBathOfAHeatThatIsCharged_CountsIt()
    {
        await WeighIn("pig", 700);
        var heat = await Heat();
        heat = heat with { Weighings = [.. heat.Weighings.Select(weighing => weighing with { IntoBath = true })] };

        Assert.Equal(700, WeighingRow.Of(heat, []).Single(row => row.Code == "pig").ActualKg);
        Assert.Equal(0, WeighingRow.Of(heat with { Heat = heat.Heat with { State = HeatState.Bath } }, []).Single(row => row.Code == "pig").ActualKg);
    }

    [Fact]
    public async Task FirstPlan_OnceSomethingElseIsIn_DoesNotStand()
    {
        await WeighIn("copper", 0.1);

        Assert.False(FirstPlan.StillStands(await Heat()));
    }

    [Fact]
    public async Task FirstPlan_OnAnotherHeel_DoesNotStand()
    {
        await The<DipFurnace>().Run(Founder, new(Guid.NewGuid(), Now, FurnaceId, 300, null, "dipped with a bar"), Cancellation);

        Assert.False(FirstPlan.StillStands(await Heat()));
    }

    /// <summary>Nothing is over by itself, but a furnace that lost 1500 kg of its room does not take the rest.</summary>
    [Fact]
    public async Task FirstPlan_WithoutRoomForItsRest_DoesNotStand()
    {
        var heat = await Heat();

        Assert.True(FirstPlan.StillStands(heat));
        Assert.False(FirstPlan.StillStands(heat with { Heat = heat.Heat with { CapacityKg = 1500 } }));
    }
}
