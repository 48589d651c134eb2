using AngleSharp.Dom;
using Bunit;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Grades;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Orders;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Pages.Correction;
using MeltShop.Web.Pages.Heats;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Tests.Pages.Correction;

public sealed class CorrectionPlanningTests : CorrectionTest
{
    [Fact]
    public void Correction_BeforeASample_SaysWhatItWaitsFor()
    {
        SignIn(Role.Melter);
        var page = Render<CorrectionPlanning>(parameters => parameters.Add(p => p.HeatId, HeatId));

        page.WaitForState(() => page.FindAll("[data-state=empty]").Count > 0, Patience);
        Assert.Contains("bath sample", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Correction_OfAnUnknownHeat_IsMissing()
    {
        SignIn(Role.Melter);
        var page = Render<CorrectionPlanning>(parameters => parameters.Add(p => p.HeatId, 4711));

        page.WaitForState(() => page.FindAll("[data-state=missing]").Count > 0, Patience);
    }

    [Fact]
    public async Task Correction_OfALowBath_WaitsForTheTemperatureThenProposesAndPredicts()
    {
        await LowBath();
        var page = OpenCorrection();
        Assert.Contains("Enter the bath temperature", page.Find("[data-testid=proposal]").TextContent, StringComparison.Ordinal);
        Assert.True(page.Find("[data-testid=accept]").HasAttribute("disabled"));

        Temperature(page, "1450");

        Assert.NotEmpty(page.FindAll("[data-testid=additions] tr[data-material]"));
        Assert.Contains("recovery of C into the bath not said", page.Find("[data-testid=additions] tr[data-material=carbon] [data-testid=as-charge]").TextContent, StringComparison.Ordinal);
        Assert.Contains("kWh", page.Find("[data-testid=drop]").TextContent, StringComparison.Ordinal);
        Assert.All(
            page.FindAll("[data-testid=proposal] [data-verdict]"),
            bar => Assert.Equal(bar.GetAttribute("data-quantity") == "Cu" ? "unjudged" : "in", bar.GetAttribute("data-verdict"))); // copper was not measured
        Assert.Equal(["Dry", "Carbon", "Power", "TapOff"], page.FindAll("[data-testid=cautions] [data-caution]").Select(c => c.GetAttribute("data-caution")));
    }

    [Fact]
    public async Task Correction_AfterASampleOfAKnownInstrument_SaysHowFarTheNextOneMayReadFromWhatIsPredicted()
    {
        var spark = (await The<AddInstrument>().Run(Founder, new(
            Guid.NewGuid(), Now, "spark-1", "Spark, hall 1", InstrumentKind.Spark, false, [new("Si", 0.02, 2)], "invented for a test"), Cancellation)).Value;
        await WeighIn("steel", 1500);
        await The<RecordSample>().Run(Founder, new(
            Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[Read("C", 3.40), Read("Si", 1.20), Read("Mn", 0.30)]], InstrumentId: spark), Cancellation);
        var page = OpenCorrection();
        Temperature(page, "1450");

        Assert.Equal("repeatability 0.02\u00a0%", page.Find("[data-testid=proposal] [data-quantity=Si] [data-testid=repeatability]").TextContent);
        Assert.Empty(page.FindAll("[data-testid=proposal] [data-quantity=C] [data-testid=repeatability]")); // nobody found that of carbon
        Assert.StartsWith("Repeatability: by how much Spark, hall 1 may read", page.Find("[data-testid=resampled]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Accept_PressedOnTheDrawingOfAFormerProposal_AcceptsNoOther()
    {
        await LowBath();
        var page = OpenCorrection();
        Temperature(page, "1450");
        var former = page.FindAll("[data-testid=correction-form]").Single();
        page.Find("[data-field=leastAdditionKg] input").Change("1");
        page.WaitForState(() => page.FindAll("[data-testid=proposal][data-current=true]").Count > 0);

        await Assert.ThrowsAsync<Bunit.Rendering.UnknownEventHandlerIdException>(() => former.SubmitAsync()); // a browser has it said, with the masses that stood there
        Assert.Empty((await Heat()).Corrections);
    }

    [Fact]
    public async Task Correction_AfterATemperature_SaysHowOldItIs()
    {
        await LowBath();
        Clock.At = Now; // it stands: a busy machine takes its time to draw
        await The<RecordTemperature>().Run(Founder, new(Guid.NewGuid(), Now.AddMinutes(-14), HeatId, null, 1452), Cancellation);
        var page = OpenCorrection();

        var words = page.Find("[data-testid=temperature-age]").TextContent;
        Assert.StartsWith("Last temperature: 1452\u00a0°C at", words, StringComparison.Ordinal);
        Assert.EndsWith("14\u00a0min ago.", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3.51, true)]
    [InlineData(3.49, false)]
    public async Task Correction_OfABath_SaysWhetherItKeepsEveryLimitAsItIs(double carbon, bool isInside)
    {
        await WeighIn("steel", 1500);
        await The<RecordSample>().Run(Founder, new(
            Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[Read("C", carbon), Read("Si", 1.50), Read("Mn", 0.30), Read("Cu", 0.05)]]), Cancellation);
        var page = OpenCorrection();
        Temperature(page, "1450");

        Assert.NotEmpty(page.FindAll("[data-testid=additions] tr[data-material]"));
        Assert.Equal(isInside, page.FindAll("[data-testid=inside]").Count > 0);
    }

    /// <summary>Copper has a most of 0.1 % and was not measured.</summary>
    [Fact]
    public async Task Correction_OfABathThatNeedsNone_SaysWhatWasTakenAsZeroForIt()
    {
        await WeighIn("steel", 1500);
        await GoodSample();
        var page = OpenCorrection();
        Temperature(page, "1450");

        Assert.NotNull(page.Find("[data-testid=idle]"));
        Assert.Equal("! not measured, taken as zero: Cu", page.Find("[data-testid=assumed-zero]").TextContent);
    }

    /// <summary>
    /// Phosphorus has no window and is told as the additions leave it. Pig iron has to thin the manganese and brings sulphur, of which
    /// nobody knows how much was in the bath: it is not told.
    /// </summary>
    [Fact]
    public async Task Prediction_OfElementsWithoutAWindow_IsOfWhatWasMeasured()
    {
        await WeighIn("steel", 1500);
        await The<RecordSample>().Run(Founder, new(
            Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[Read("C", 3.65), Read("Si", 1.50), Read("Mn", 0.52), Read("P", 0.030)]]), Cancellation);
        var page = OpenCorrection();
        Temperature(page, "1450");

        Assert.NotNull(page.Find("[data-testid=additions] tr[data-material=pig]"));
        Assert.StartsWith("P 0.02", Assert.Single(page.FindAll("[data-testid=other-elements] [data-element]")).TextContent, StringComparison.Ordinal);
    }

    /// <summary>Sc = 3.6 / (4.26 − 1.506 / 3) = 0.958: inside 0.90 to 0.97, not by the margin of 0.02. Without steel and copper to dilute with nothing lowers it.</summary>
    [Fact]
    public async Task Window_OfACurvedQuantity_IsToldAsTheGradeSaysItAndItsMarginApart()
    {
        await WeighIn("steel", 1500);
        await The<RecordSample>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[Read("C", 3.60), Read("Si", 1.50), Read("P", 0.006)]]), Cancellation);
        var facts = With(new(WindowStage.Furnace, "Sc", 0.90, null, 0.97, 0.02), (await The<CorrectionForecast>().Facts(HeatId, Cancellation))!);
        var figures = Figures(facts, new(1450));

        Assert.NotNull(figures.Find("[data-testid=inside]"));
        Assert.Matches("least 0.90aim.*most 0.97$", figures.Find("[data-quantity=Sc] .limit-figures").TextContent.ToLowerInvariant());

        var choice = new CorrectionChoice(1450, LeftOut: ["steel", "copper"]);
        var barred = CorrectionProposal.For(facts, choice, CorrectionQuestion.Build(facts, choice).Problem!, Cancellation);
        var words = Render<OutOfReach>(p => p.Add(o => o.Plan, barred.Plan.Plan).Add(o => o.Ways, new([], [])).Add(o => o.NameOf, code => code));
        Assert.Contains("0.97 and a margin of 0.02 to it are asked; ", words.Find("[data-clash=Sc]").TextContent, StringComparison.Ordinal);
    }

    /// <summary>C + Si/4 = 4.375: past the end of the liquidus formula, so nobody can say that it is inside.</summary>
    [Fact]
    public async Task Bath_BeyondTheFormulaOfItsWindow_IsNotSaidToBeInside()
    {
        await WeighIn("steel", 1500);
        await The<RecordSample>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[Read("C", 3.90), Read("Si", 1.90), Read("P", 0.006)]]), Cancellation);
        var facts = With(new(WindowStage.Furnace, "liquidusC", 1150, null, 1250, 0), (await The<CorrectionForecast>().Facts(HeatId, Cancellation))!);

        Assert.Empty(Figures(facts, new(1450)).FindAll("[data-testid=inside]"));
    }

    [Fact]
    public async Task Addition_NotWanted_LeavesTheProposalAndCanBeTakenBack()
    {
        await LowBath();
        var page = OpenCorrection();
        Temperature(page, "1450");
        await page.InvokeAsync(() => page.Find("[data-material=fesi] button").Click());
        page.WaitForState(() => page.FindAll("[data-testid=out-of-reach], [data-current=true]").Count > 0 && page.FindAll("[data-material=fesi]").Count == 0, Patience);

        await page.InvokeAsync(() => page.FindAll("button").Single(button => button.TextContent.Contains("after all", StringComparison.Ordinal)).Click());
        page.WaitForState(() => page.FindAll("[data-material=fesi]").Count > 0, Patience);
    }

    [Fact]
    public async Task TapOff_WithoutItsCost_IsToldAtItsField()
    {
        await LowBath();
        var page = OpenCorrection();
        Temperature(page, "1450");
        page.Find("[data-field=maxTapOffKg] input").Change("100");

        page.WaitForState(() => page.FindAll("[data-field=tapOffCostPerTonne] .field-error").Count > 0, Patience);
        Assert.Equal("price.missing", page.Find("[data-field=tapOffCostPerTonne] .field-error").GetAttribute("data-code"));
    }

    [Fact]
    public async Task Correction_Accepted_IsTheMeltersTaskUntilItIsWeighedInAndSampled()
    {
        await LowBath();
        var page = OpenCorrection();
        Temperature(page, "1450");
        await page.InvokeAsync(() => page.Find("[data-testid=correction-form]").Submit());
        page.WaitForState(() => The<NavigationManager>().Uri.Contains("#correction", StringComparison.Ordinal), Patience);
        var heat = Open();
        Assert.Equal("false", heat.Find("[data-testid=correction]").GetAttribute("data-done"));
        Assert.Equal(["C", "Si", "Mn"], heat.FindAll("[data-testid=predicted] [data-element]").Select(one => one.GetAttribute("data-element"))); // of copper nobody knows what was in it

        foreach (var line in CorrectionTask.Of(Assert.Single((await Heat()).Corrections), await Heat(), []).Lines)
        {
            await heat.InvokeAsync(() => heat.Find($"[data-testid=correction] [data-material={line.Code}] button").Click());
            heat.WaitForState(() => heat.FindAll("[data-testid=correction-weigh] input").Count > 0, Patience);
            Assert.Equal(line.Code == "carbon", heat.FindAll("[data-testid=correction-weigh] [data-caution=Carbon]").Count > 0);
            heat.Find("[data-testid=correction-weigh] input").Change(line.TargetKg.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture));
            await heat.Find("[data-testid=correction-weigh]").SubmitAsync();
            heat.WaitForState(() => heat.FindAll("[data-testid=correction-weigh]").Count == 0, Patience);
        }

        heat.WaitForAssertion(() => Assert.Equal("true", heat.Find("[data-testid=correction]").GetAttribute("data-done")), Patience);
        await Sample([3.60, 1.45, 0.30]);
        heat.WaitForAssertion(() => Assert.Contains("→ 3.60", heat.Find("[data-testid=predicted] [data-element=C]").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task Others_Looked_SaysThatThereIsNoOtherGrade()
    {
        await LowBath();
        var page = OpenCorrection();
        Temperature(page, "1450");
        await page.InvokeAsync(() => page.Find("[data-testid=others] button").Click());

        page.WaitForState(() => page.Find("[data-testid=others]").TextContent.Contains("no other grade", StringComparison.Ordinal), Patience);
    }

    // 12 of 85 kg at 68 % are 1500 kg, 2 of 40 kg at 80 % are 100 kg.
    [Fact]
    public async Task Others_OfAGradeThatIsOrdered_NameTheOrderThatIsDueNextAndWhatItTakes()
    {
        var grey = (await The<AddGrade>().Run(Founder, new(Guid.NewGuid(), Now, "EN-GJL-250", IronFamily.Grey, "invented for a test", [new(WindowStage.Furnace, "C", 3.45, 3.5, 3.6), new(WindowStage.Furnace, "Cu", null, null, 0.2)], null), Cancellation)).Value;
        await The<TakeOrder>().Run(Founder, new(Guid.NewGuid(), Now, new("4711", "Bracket", grey, 22, 85, 68, 12, new(2199, 3, 9))), Cancellation);
        await The<TakeOrder>().Run(Founder, new(Guid.NewGuid(), Now, new("4712", "Lid", grey, 12, 40, 80, 2, new(2020, 3, 9))), Cancellation);
        await LowBath();
        var page = OpenCorrection();
        Temperature(page, "1450");
        await page.InvokeAsync(() => page.Find("[data-testid=others] button").Click());
        page.WaitForState(() => page.FindAll("[data-testid=ordered]").Count > 0, Patience);

        var other = page.Find("[data-testid=others] [data-grade='EN-GJL-250']");
        Assert.Matches("after [0-9.]+\u00a0kg of additions or tapping off, [0-9.]+\u00a0EUR; [0-9.]+\u00a0min at rated power", other.TextContent);
        Assert.Equal("4712, Lid", other.QuerySelector("a")!.TextContent);
        Assert.Contains("100\u00a0kg to pour, due 9 Mar 2020, relevant wall 12\u00a0mm", other.TextContent, StringComparison.Ordinal);
        Assert.Contains("and 1 more of this grade, 1600\u00a0kg in all", other.TextContent, StringComparison.Ordinal);
        Assert.NotNull(other.QuerySelector("[data-testid=late]"));
        Assert.Equal("! not measured, taken as zero: Cu", other.QuerySelector("[data-testid=other-assumed-zero]")!.TextContent.Trim());
    }

    [Fact]
    public async Task Correction_ForAnInspector_CannotBeAccepted()
    {
        await LowBath();
        var page = OpenCorrection(Role.Inspector);
        Temperature(page, "1450");

        Assert.True(page.Find("[data-testid=accept]").HasAttribute("disabled"));
        Assert.NotNull(page.Find("[data-testid=read-only]"));
    }

    [Fact]
    public async Task Correction_InThePseudoLanguage_HasNoWordOutsideItsTexts()
    {
        await LowBath();
        Speak(PseudoLanguage.Culture);
        var page = OpenCorrection();
        Temperature(page, "1450");

        Assert.Empty(Marks.WordsOutside(page.Nodes, "Test", "pig", "steel", "carbon", "fesi", "copper", "EN-GJS-500-7", "EUR/t", "EUR", "kg", "C", "Si", "Mn", "Cu", (await Heat()).Heat.Number));
    }

    [Fact]
    public async Task Correction_OutOfReach_SaysWhatSavingTheBathWouldTake()
    {
        await WeighIn("steel", 1900);
        await Sample([3.60, 1.60, 1.20], [3.61, 1.60, 1.20]);
        var page = OpenCorrection();
        Temperature(page, "1450");

        Assert.NotEmpty(page.FindAll("[data-testid=out-of-reach] [data-clash=Mn]"));
        var way = page.Find("[data-testid=ways] [data-way=TapOff]").TextContent;
        Assert.Matches("[0-9]+\u00a0kg out first, then [0-9]+\u00a0kg in; [0-9.]+\u00a0min at rated power", way);
    }

    [Fact]
    public async Task Addition_SmallerThanIsWeighed_IsMarkedWhereItCannotBeLeftOut()
    {
        await LowBath();
        var page = OpenCorrection();
        Temperature(page, "1450");
        Assert.Empty(page.FindAll("[data-testid=too-small]"));

        page.Find("[data-field=leastAdditionKg] input").Change("500");
        page.WaitForState(() => page.FindAll("[data-testid=too-small]").Count > 0, Patience);
        Assert.Contains("finer scale", page.Find("[data-testid=too-small-words]").TextContent, StringComparison.Ordinal);
    }

    private static CorrectionFacts With(WindowView window, CorrectionFacts facts) => facts with { View = facts.View with { Grade = facts.View.Grade with { Windows = [window] } } };

    private IRenderedComponent<ProposalFigures> Figures(CorrectionFacts facts, CorrectionChoice choice)
    {
        var proposal = CorrectionProposal.For(facts, choice, CorrectionQuestion.Build(facts, choice).Problem!, Cancellation);
        Assert.True(proposal is { IsReached: true, IsIdle: false });
        return Render<ProposalFigures>(p => p.Add(f => f.Facts, facts).Add(f => f.Proposal, proposal).Add(f => f.Currency, "EUR"));
    }

    [Fact]
    public async Task Addition_LeftOut_StaysOutOfAPageThatIsLoadedAnewUntilItIsTakenBack()
    {
        await LowBath();
        The<NavigationManager>().NavigateTo("/heats/1/correction?without=carbon&without=nobody");
        var page = OpenCorrection();
        Temperature(page, "1450");
        Assert.Empty(page.FindAll("[data-testid=additions] tr[data-material=carbon]"));
        page.Do(() => page.FindAll("[data-testid=correction-form] button").Single(button => button.TextContent.EndsWith("after all", StringComparison.Ordinal)).ClickAsync());
        page.WaitForState(() => page.FindAll("[data-testid=additions] tr[data-material=carbon]").Count > 0, Patience);
        var said = JSInterop.Invocations["say"][^1].Arguments;
        Assert.Equal(("without", "/heats/1/correction"), (said[0], said[2]));
        Assert.Empty((IReadOnlyList<string>)said[1]!);
        page.Find("[data-testid=additions] tr[data-material=carbon] button").Click();
        Assert.Equal(["carbon"], (IReadOnlyList<string>)JSInterop.Invocations["say"][^1].Arguments[1]!);
        Assert.EndsWith("?without=carbon&without=nobody", The<NavigationManager>().Uri, StringComparison.Ordinal); // a navigation would read and propose once more
    }

    private IRenderedComponent<CorrectionPlanning> OpenCorrection(string role = Role.Melter)
    {
        SignIn(role);
        var page = Render<CorrectionPlanning>(parameters => parameters.Add(p => p.HeatId, HeatId));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }

    private static void Temperature(IRenderedComponent<CorrectionPlanning> page, string typed)
    {
        page.Find("[data-field=temperatureC] input").Change(typed);
        page.WaitForState(() => page.FindAll("[data-testid=proposal][data-current=true]").Count > 0, Patience);
    }
}
