using Bunit;
using MeltShop.Charging.Plans;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Storing;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Pages.Heats;

namespace MeltShop.Web.Tests.Pages.Heats;

public sealed class WeighingTests : HeatTest
{
    [Fact]
    public void Card_JustStarted_ListsThePlanInTheOrderOfLoading()
    {
        var codes = Open().FindAll("[data-testid=weighings] tr[data-material]").Select(row => row.GetAttribute("data-material")).ToList();

        Assert.Equal("carbon", codes[0]);
        Assert.Equal("steel", codes[1]);
        Assert.Equal("fesi", codes[^1]);
    }

    [Fact]
    public async Task Material_WeighedTwice_AddsUpAndShowsWhatIsLeft()
    {
        var page = Open();
        page.Find("tr[data-material=steel] button").Click();
        Type(page, "weigh-form", "kg", "400,7");
        await page.Find("[data-testid=weigh-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=weighed]").Count > 0, Patience);
        Type(page, "weigh-form", "kg", "100");
        await page.Find("[data-testid=weigh-form]").SubmitAsync();

        page.WaitForAssertion(() => Assert.Contains("501\u00a0kg", page.Find("tr[data-material=steel] td.live[data-heading=Weighed]").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal([400.7, 100], (await Heat()).Weighings.Select(weighing => weighing.Kg));
        Assert.Matches("still [0-9]+\u00a0kg", page.Find("tr[data-material=steel]").TextContent);
    }

    [Fact]
    public async Task Submit_PressedTwice_WeighsOnce()
    {
        var page = Open();
        Type(page, "weigh-form", "kg", "5");
        await page.Find("[data-testid=weigh-form]").SubmitAsync();
        await page.Find("[data-testid=weigh-form]").SubmitAsync();

        page.WaitForState(() => page.FindAll("[data-testid=weighed]").Count > 0, Patience);
        Assert.Single((await Heat()).Weighings);
    }

    [Theory]
    [InlineData("-5", "number.tooSmall")]
    [InlineData("0", "number.tooSmall")]
    [InlineData("a lot", "number.notANumber")]
    [InlineData("1 250", "number.thousands")]
    [InlineData("1,250", "number.ambiguous")]
    [InlineData("", "number.missing")]
    public async Task Mass_Wrong_IsToldAtItsFieldAndNothingIsRecorded(string typed, string code)
    {
        var page = Open();
        Type(page, "weigh-form", "kg", typed);
        await page.Find("[data-testid=weigh-form]").SubmitAsync();

        Assert.Equal(code, Error(page, "weigh-form", "kg"));
        Assert.Equal(typed, Field(page, "weigh-form", "kg").QuerySelector("input")!.GetAttribute("value"));
        Assert.Empty((await Heat()).Weighings);
    }

    [Fact]
    public async Task Material_TooMuch_IsSaidAsOver()
    {
        await WeighIn("carbon", 500);
        var row = Open().Find("tr[data-material=carbon] [data-standing]");

        Assert.Equal("over", row.GetAttribute("data-standing"));
        Assert.Matches("! [0-9]+\u00a0kg over", row.TextContent);
    }

    [Fact]
    public async Task Material_OverButStillPossible_MovesTheOtherTargetsAndSaysSo()
    {
        var (pig, steel) = (Kg(Open(), "pig"), Kg(Open(), "steel"));
        await WeighIn("pig", pig + 60);
        var page = Open();
        page.WaitForState(() => page.FindAll("[data-testid=rest][data-standing=Kept]").Count > 0, Patience);

        Assert.True(Kg(page, "steel") < steel, $"{Kg(page, "steel")}\u00a0kg of steel, first {steel}");
        Assert.Contains("first ", page.Find("tr[data-material=steel] .moved").TextContent, StringComparison.Ordinal);
        Assert.Equal("over", page.Find("tr[data-material=pig] [data-standing]").GetAttribute("data-standing"));
    }

    /// <summary>2500 kg of steel leave no room for pig iron; what was offered before that was known is not offered on.</summary>
    [Fact]
    public async Task Material_OfferedBeforeTheRestWasPlanned_GivesWayToWhatIsStillWanted()
    {
        var page = Open();
        await WeighIn("steel", 2500);
        page.WaitForState(() => page.FindAll("[data-testid=rest][data-standing=Missed]").Count > 0, Patience);

        page.WaitForAssertion(() =>
        {
            var chosen = page.Find("[data-testid=weighings] tr.chosen");
            Assert.Contains("still ", chosen.QuerySelector("[data-standing]")!.TextContent, StringComparison.Ordinal);
        }, Patience);
    }

    /// <summary>The row says that it is in before the answer does, as over a slow way.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Entry_AcceptedLate_IsSaidAndTheNextOfferedUnlessItWasBegun(bool isTouched)
    {
        var page = Open();
        var kg = Kg(page, "carbon");
        page.Find("tr[data-material=carbon] button").Click(); // what a person chose is not taken back by a plan
        await WeighIn("carbon", kg);
        page.WaitForState(() => page.FindAll("tr[data-material=carbon] [data-standing=done]").Count > 0, Patience);

        await page.Find("[data-testid=weigh-form]").TriggerEventAsync("onentryanswered", new EntryAnsweredEventArgs
        {
            Late = new Dictionary<string, string> { ["materialId"] = $"{MaterialIds["carbon"]}", ["kg"] = "61,5" },
            IsTouched = isTouched,
        });

        Assert.Equal("✓ 61.5\u00a0kg of Test carbon weighed in", page.Find("[data-testid=weighed]").TextContent.Trim());
        Assert.Equal(isTouched, page.Find("[data-testid=weighings] tr.chosen").GetAttribute("data-material") == "carbon");
    }

    /// <summary>While one types a mass another weighs all that was wanted of it; over a slow way the page may offer the next already.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Mass_BegunBesideAMaterialThatIsFullByNow_StaysOfIt(bool isMoved)
    {
        var page = Open();
        var begun = new EntryBegunEventArgs { Fields = new Dictionary<string, string> { ["materialId"] = $"{MaterialIds["carbon"]}", ["lot"] = "L 7" } };
        if (!isMoved) await page.Find("[data-testid=weigh-form]").TriggerEventAsync("onentrybegun", begun);
        await WeighIn("carbon", Kg(page, "carbon"));
        page.WaitForState(() => page.FindAll("tr[data-material=carbon] [data-standing=done]").Count > 0 && page.FindAll("[data-testid=rest-planning]").Count == 0, Patience);
        if (isMoved)
        {
            page.WaitForAssertion(() => Assert.Equal("steel", Chosen(page)), Patience);
            await page.Find("[data-testid=weigh-form]").TriggerEventAsync("onentrybegun", begun);
        }

        Assert.Equal("carbon", Chosen(page));
        Type(page, "weigh-form", "kg", "10");
        Assert.Equal("carbon", Chosen(page));
        Type(page, "weigh-form", "kg", ""); // and it is left alone after all
        await WeighIn("pig", 1);
        page.WaitForAssertion(() => Assert.Equal(isMoved ? "carbon" : "steel", Chosen(page)), Patience);
    }

    /// <summary>Half of the steel, and the card is read with it before the answer comes: the other half is still to come, and its mass is not taken off again.</summary>
    [Theory]
    [InlineData(0.5, true)]
    [InlineData(1, false)]
    public async Task Entry_InTheRowBeforeItsAnswer_CountsOnce(double share, bool isStillWanted)
    {
        var page = Open();
        page.Find("tr[data-material=steel] button").Click();
        var kg = Math.Round(share * Kg(page, "steel"));
        Type(page, "weigh-form", "kg", $"{kg}");
        await WeighIn("steel", kg);
        page.WaitForState(() => page.FindAll("tr[data-material=steel] td.live[data-heading=Weighed]").Count > 0, Patience);
        await page.Find("[data-testid=weigh-form]").TriggerEventAsync("onentryanswered", new EntryAnsweredEventArgs());

        Assert.Equal($"✓ {kg}\u00a0kg of Test steel weighed in", page.Find("[data-testid=weighed]").TextContent.Trim());
        Assert.Equal(isStillWanted, page.Find("[data-testid=weighings] tr.chosen").GetAttribute("data-material") == "steel");
    }

    [Fact]
    public async Task Rest_PlannedForAnEarlierReading_LeavesTheSearchForTheNewerOneAlone()
    {
        SignIn(Role.Melter);
        var yard = (await The<YardPage>().Load(null, Cancellation)).Materials;
        var heat = await Heat();
        using var earlier = new HeldWeighings(heat.Weighings);
        var card = Render<WeighInCard>(parameters => parameters.Add(c => c.Screen, new(heat with { Weighings = earlier }, yard)).Add(c => c.IsOffered, true));
        await earlier.Asked.WaitAsync(Patience, Cancellation);
        await WeighIn("copper", 10);
        heat = await Heat();
        using var newer = new HeldWeighings(heat.Weighings);
        card.Render(parameters => parameters.Add(c => c.Screen, new(heat with { Weighings = newer }, yard)));
        await newer.Asked.WaitAsync(Patience, Cancellation);

        var drawn = card.RenderCount;
        earlier.LetGo();
        card.WaitForState(() => card.RenderCount > drawn, Patience);
        Assert.NotEmpty(card.FindAll("[data-testid=rest-planning]"));
        newer.LetGo();

        card.WaitForState(() => card.FindAll("[data-testid=rest][data-standing=Missed]").Count > 0, Patience);
        Assert.Empty(card.FindAll("[data-testid=rest-planning]"));
    }

    [Fact]
    public async Task Target_OutOfReach_IsSaidWithWhatDoesTheLeastHarm()
    {
        await WeighIn("copper", 10);
        var page = Open();
        page.WaitForState(() => page.FindAll("[data-testid=rest][data-standing=Missed]").Count > 0, Patience);

        // 10 kg of 99 % copper in 2000 to 2020 kg of iron; 0.10 % is the most.
        Assert.Matches(@"Cu will be 0\.49\u00a0%; the most is 0\.10\u00a0%, 0\.39\u00a0% too much\.", page.Find("[data-missed=Cu]").TextContent);
        Assert.Contains("do the least harm", page.Find("[data-testid=rest]").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll("tr[data-material=steel] [data-standing=open]"));
        Assert.Matches(@"Cu\s*0\.49\u00a0% to ", page.Find("[data-testid=still-possible] [data-reach=Cu]").TextContent);
    }

    [Fact]
    public async Task Material_WithoutAnAnalysis_IsNamedAndTheRestIsNotPlannedFromIt()
    {
        await Add("unknown", MaterialKind.CastScrap, 200, 95, new MaterialPercentInput("C", 3));
        await Forget("unknown");
        await WeighIn("unknown", 100);
        var page = Open();
        page.WaitForState(() => page.FindAll("[data-testid=rest][data-standing=Unknown]").Count > 0, Patience);

        Assert.Contains("Test unknown has no analysis", page.Find("[data-testid=rest]").TextContent, StringComparison.Ordinal);
        Assert.Contains("Stop, and ask the metallurgist: 95.0\u00a0kg are in the furnace, which holds 3000\u00a0kg", page.Find("[data-testid=rest]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Furnace_FilledOverItsCapacity_IsCautioned()
    {
        foreach (var kg in new[] { 1600, 1700 }) await WeighIn("pig", kg);
        var page = Open();
        page.WaitForState(() => page.FindAll("[data-testid=overfull]").Count > 0, Patience);

        Assert.Contains("the furnace holds 3000\u00a0kg", page.Find("[data-testid=overfull]").TextContent, StringComparison.Ordinal);
        // Nothing more is asked for.
        Assert.Contains("no more of it", page.Find("tr[data-material=steel] [data-standing]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("still ", page.Find("[data-testid=weighings] tbody").TextContent, StringComparison.Ordinal);
    }

    /// <summary>For a row, carbon one percent under its target is as good as on it; what nobody will add is not counted on.</summary>
    [Theory]
    [InlineData(1.0, "Kept", "as it stands, all limits are kept")]
    [InlineData(0.997, "WithoutMargin", "not with the margin")]
    [InlineData(0.991, "Missed", "as it stands not everything is kept")]
    public async Task Target_OnceNothingMoreIsAskedFor_IsThatOfWhatIsIn(double share, string standing, string words)
    {
        foreach (var row in WeighingRow.Of(await Heat(), (await The<YardPage>().Load(null, Cancellation)).Materials))
            await WeighIn(row.Code, row.Code is "fesi" or "carbon" ? row.TargetKg * share : row.TargetKg);
        var page = Open();
        page.WaitForState(() => page.FindAll("[data-testid=rest][data-all-in=true]").Count > 0, Patience);

        Assert.Empty(page.FindAll("[data-testid=weighings] [data-standing=open]"));
        Assert.Equal(standing, page.Find("[data-testid=rest]").GetAttribute("data-standing"));
        Assert.Contains(words, page.Find("[data-testid=rest]").TextContent, StringComparison.Ordinal);
        var sheet = Render<WeighingSheet>(parameters => parameters.Add(p => p.HeatId, HeatId));
        sheet.WaitForState(() => sheet.FindAll("[data-testid=rest][data-all-in=true]").Count > 0, Patience);
        Assert.Equal(standing, sheet.Find("[data-testid=rest]").GetAttribute("data-standing"));
    }

    [Fact]
    public async Task Order_OfSiliconCarbide_IsLowWithTheCarburiserAsThePlanReckonsIt()
    {
        await Add("sic", MaterialKind.FerroAlloy, 1200, 90, new("C", 31.5, null, 90, 45), new("Si", 68.4, null, 90, 45));
        await WeighIn("sic", 5);

        var codes = Open().FindAll("[data-testid=weighings] tr[data-material]").Select(row => row.GetAttribute("data-material")).ToList();
        Assert.Equal(["carbon", "sic", "steel"], codes.Take(3));
        Assert.Equal("fesi", codes[^1]);
    }

    [Fact]
    public void Card_AnyHeat_LinksToItsPlan() =>
        Assert.StartsWith("/charge/plans/", Open().Find("[data-testid=to-plan]").GetAttribute("href"), StringComparison.Ordinal);

    [Theory]
    [InlineData(100, 0, "open")]
    [InlineData(100, 98, "open")]
    [InlineData(100, 99.5, "done")]
    [InlineData(100, 100.9, "done")]
    [InlineData(100, 102, "over")]
    [InlineData(0, 5, "over")]
    public void Row_TargetAndActual_StandAsTheyShould(double target, double actual, string standing)
    {
        var row = new WeighingRow(1, "a", "A", null, target, actual, 1);

        Assert.Equal(standing, row.IsDone ? "done" : row.IsOver ? "over" : "open");
    }

    /// <summary>As much as the rest wants, to what a scale shows, and more than the first plan wanted: the next one is offered.</summary>
    [Fact]
    public void Row_OverItsFirstPlanAndAsTheRestWantsIt_IsNotOpen() =>
        Assert.False(new WeighingRow(1, "a", "A", null, 100, 99.5, 1) { PlannedKg = 90 }.IsOpen);

    /// <summary>0.005 % of 2000 kg are 0.1 kg.</summary>
    [Theory]
    [InlineData(0.09, true)]
    [InlineData(0.11, false)]
    public async Task Row_OfLessThanIsWorthWeighing_IsNotAskedFor(double kg, bool isTooLittle)
    {
        var heat = await Heat();
        var rows = WeighingRow.Of(heat, [], [.. StoredJson.Value<ChargePlan>(heat.Plan.Answer).Lines, new("tin", kg, 0)]);

        Assert.Equal(isTooLittle, rows.Single(row => row.Code == "tin").IsTooLittle);
        Assert.All(rows.Where(row => row.Code != "tin"), row => Assert.False(row.IsTooLittle));
        Assert.False((rows.Single(row => row.Code == "tin") with { MaterialId = 1, IsTooLittle = true }).IsOpen);
    }

    [Fact]
    public async Task Bath_AfterASample_TakesAdditionsAsAdditions()
    {
        await WeighAll();
        await GoodSample();
        var page = Open();
        page.Find("[data-testid=weigh-form] select").Change(MaterialIds["fesi"].ToString(System.Globalization.CultureInfo.InvariantCulture));
        Type(page, "weigh-form", "kg", "3");
        await page.Find("[data-testid=weigh-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=weighed]").Count > 0, Patience);

        Assert.True((await Heat()).Weighings[^1].IntoBath);
        // It is no part of the charge: nothing is over, nothing is still to come, and no rest is planned.
        Assert.Equal(["done"], page.FindAll("[data-testid=weighings] [data-standing]").Select(cell => cell.GetAttribute("data-standing")).Distinct());
        Assert.Empty(page.FindAll("[data-testid=rest]"));
        Assert.Contains("dry, cold additions", page.Find("[data-testid=weighing] .caution").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bath_ThatHadLessThanItsPlan_SaysSoAndAsksForNoMore()
    {
        await WeighIn("pig", 100);
        await GoodSample();
        var page = Open();

        Assert.Matches("[0-9]+\u00a0kg under the first plan", page.Find("tr[data-material=pig] [data-standing]").TextContent);
        Assert.DoesNotContain("still", page.Find("[data-testid=weighings]").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("[data-testid=rest]"));
    }

    [Fact]
    public async Task Heel_DippedBesideThePlan_IsToldWithBothFiguresAndWhatToDo()
    {
        await The<DipFurnace>().Run(Founder, new(Guid.NewGuid(), Now, FurnaceId, 300, null, "dipped with a bar"), Cancellation);
        var page = Open();
        page.WaitForState(() => page.FindAll("[data-testid=rest-heel]").Count > 0, Patience);

        var words = page.Find("[data-testid=rest-heel].caution").TextContent;
        Assert.Contains("the plan has 0\u00a0kg, the furnace’s ledger 300\u00a0kg. The rest is planned with 300\u00a0kg. Dip the furnace before you load on, or plan anew.", words, StringComparison.Ordinal);
        Assert.Contains("Not measured in the heel, and taken as 0: C,", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Heel_LargerByTheLedgerThanTheFurnaceHas_IsCautioned()
    {
        await WeighIn("steel", 50);
        await The<DipFurnace>().Run(Founder, new(Guid.NewGuid(), Now.AddMinutes(1), FurnaceId, 1500, null, "the load cell"), Cancellation);
        var page = Open();
        page.WaitForState(() => page.FindAll("[data-testid=overfull]").Count > 0, Patience);

        Assert.Contains("should the heel be the larger one", page.Find("[data-testid=overfull]").TextContent, StringComparison.Ordinal);
        Assert.Contains("The rest is planned with 0\u00a0kg", page.Find("[data-testid=rest-heel]").TextContent, StringComparison.Ordinal);
    }

    private static string? Chosen(IRenderedComponent<HeatDetail> page) => page.Find("[data-testid=weighings] tr.chosen").GetAttribute("data-material");

    private static double Kg(IRenderedComponent<HeatDetail> page, string material) => double.Parse(
        page.FindAll($"tr[data-material={material}] td")[1].TextContent.Trim().Split('\u00a0')[0], System.Globalization.CultureInfo.InvariantCulture);
}
