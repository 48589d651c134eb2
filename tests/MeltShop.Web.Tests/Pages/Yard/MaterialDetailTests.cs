using Bunit;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Pages.Yard;

namespace MeltShop.Web.Tests.Pages.Yard;

public sealed class MaterialDetailTests : YardTest
{
    [Fact]
    public void Material_Opened_ShowsRecoveryScatterSourceAndCautions()
    {
        var page = Open(Role.Melter);

        Assert.Contains("92", page.FindAll("[data-testid=analysis] tbody tr")[2].TextContent, StringComparison.Ordinal);
        Assert.Equal("not said: as with the charge", page.FindAll("[data-testid=bath-recovery]")[2].TextContent);
        Assert.Contains("± 0.25", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Test figures", page.Markup, StringComparison.Ordinal);
        Assert.Contains("explodes", page.Find("[data-testid=cautions]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Material_OpenedByAMelter_MayOnlyBookStock()
    {
        var page = Open(Role.Melter);

        Assert.Equal(["Book stock"], page.FindAll("button").Select(button => button.TextContent));
        Assert.Contains("metallurgist", page.Find("[data-testid=read-only]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lots_UsedUpLongAgo_AreCounted()
    {
        var material = (await The<YardPage>().Material(PlateId, Cancellation))! with
        {
            Lots = [.. Enumerable.Range(1, 8).Select(n => new LotView($"L-{n}", 0, Now)), new("L-9", 500, Now)],
        };

        var list = Render<LotList>(parameters => parameters.Add(p => p.Material, material));

        Assert.Equal(["L-9", "L-8", "L-7", "L-6", "L-5", "L-4"], list.FindAll("[data-lot] strong").Select(lot => lot.TextContent));
        Assert.StartsWith("3 more", list.Find("[data-testid=lots-used-up]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Material_TakenOutOfUse_SaysSoAndIsTakenBack()
    {
        var page = Open(Role.Metallurgist);

        await page.Find("[data-testid=use]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Contains("no longer used", page.Find(".page-head").TextContent, StringComparison.Ordinal), Patience);
        await page.Find("[data-testid=use]").SubmitAsync();
        page.WaitForAssertion(() => Assert.DoesNotContain("no longer used", page.Find(".page-head").TextContent, StringComparison.Ordinal), Patience);
    }

    [Theory]
    [InlineData("412.50")]
    [InlineData("412,50")]
    public async Task Price_TypedWithCommaOrPoint_IsSavedTheSame(string typed)
    {
        var page = OpenPriceForm();
        page.Find("[data-field=pricePerTonne] input").Change(typed);
        await page.Find("[data-testid=price-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Equal("412.50\u00a0EUR/t", page.Find("[data-testid=price]").TextContent));

        Assert.Equal(412.50m, (await Plate()).PricePerTonne);
    }

    [Theory]
    [InlineData("", "number.missing")]
    [InlineData("three", "number.notANumber")]
    [InlineData("1,250", "number.ambiguous")]
    [InlineData("1 250", "number.thousands")]
    [InlineData("12.345678", "money.decimals")]
    public async Task Price_Wrong_IsToldAtTheFieldAndNothingIsSaved(string typed, string code)
    {
        var page = OpenPriceForm();
        page.Find("[data-field=pricePerTonne] input").Change(typed);
        await page.Find("[data-testid=price-form]").SubmitAsync();

        Assert.Equal(code, page.Find("[data-field=pricePerTonne] .field-error").GetAttribute("data-code"));
        Assert.Equal(typed, page.Find("[data-field=pricePerTonne] input").GetAttribute("value"));
        Assert.Equal(330m, (await Plate()).PricePerTonne);
    }

    [Fact]
    public async Task Price_ChangedBySomebodyElseMeanwhile_IsToldAndWhatWasTypedStays()
    {
        var page = OpenPriceForm();
        await The<ChangePrice>().Run(Founder, new(Guid.NewGuid(), Now, PlateId, (await Plate()).Version, 350), Cancellation);
        page.Find("[data-field=pricePerTonne] input").Change("360");
        await page.Find("[data-testid=price-form]").SubmitAsync();

        page.WaitForAssertion(() => Assert.Equal("version.stale", page.Find("[data-testid=findings] li").GetAttribute("data-code")));
        Assert.Contains("350.00", page.Find(".now").TextContent, StringComparison.Ordinal);
        Assert.Equal("360", page.Find("[data-field=pricePerTonne] input").GetAttribute("value"));
        Assert.Equal(350m, (await Plate()).PricePerTonne);

        await page.Find("[data-testid=price-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Equal("360.00\u00a0EUR/t", page.Find("[data-testid=price]").TextContent));
    }

    [Fact]
    public async Task Material_ChangedBySomebodyElse_IsShownWithoutReload()
    {
        var page = Open(Role.Melter);
        await The<ChangePrice>().Run(Founder, new(Guid.NewGuid(), Now, PlateId, (await Plate()).Version, 350), Cancellation);

        page.WaitForAssertion(() => Assert.Equal("350.00\u00a0EUR/t", page.Find("[data-testid=price]").TextContent));
    }

    [Fact]
    public async Task Stock_Delivered_IsAddedAndANegativeMassIsTold()
    {
        var page = Open(Role.Melter);
        page.Find("button").Click();
        page.Find("[data-field=kg] input").Change("-5");
        await page.Find("[data-testid=stock-form]").SubmitAsync();
        Assert.Equal("number.tooSmall", page.Find("[data-field=kg] .field-error").GetAttribute("data-code"));

        page.Find("[data-field=kg] input").Change("12000");
        await page.Find("[data-testid=stock-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Equal("12000\u00a0kg", page.Find("[data-testid=stock]").TextContent));
    }

    [Fact]
    public async Task Lot_DeliveredIntoABin_IsMovedByAPressOnOneThatTheShopHasNamed()
    {
        foreach (var (lot, bin) in new[] { ("S 1", "4"), ("S 2", "7") })
        {
            Assert.True((await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now, PlateId, StockKind.Received, 500) { Lot = lot, Bin = bin }, Cancellation)).Succeeded);
        }

        var page = Open(Role.Melter);
        Assert.Equal(", bin 4", page.Find("[data-lot='S 1'] [data-testid=bin]").TextContent);
        Assert.Equal(["Its castings", "Move"], page.FindAll("[data-lot='S 1'] > .presses > .press").Select(press => press.TextContent.Trim())); // apart from the words
        page.Find("[data-lot='S 1'] [data-testid=move]").Click();
        page.WaitForState(() => page.FindAll("[data-testid=move-form] button").Any(button => button.TextContent.Trim() == "7"), Patience);
        page.Do(() => page.FindAll("[data-testid=move-form] button").Single(button => button.TextContent.Trim() == "7").ClickAsync());
        await page.Find("[data-testid=move-form]").SubmitAsync();

        page.WaitForAssertion(() => Assert.Equal(", bin 7", page.Find("[data-lot='S 1'] [data-testid=bin]").TextContent), Patience);
        Assert.Equal(["7", "7"], (await Plate()).Lots.Select(lot => lot.Bin));
    }

    private IRenderedComponent<MaterialDetail> OpenPriceForm()
    {
        var page = Open(Role.Supervisor);
        page.Do(() => page.FindAll("button").Single(button => button.TextContent == "Change the price").ClickAsync());
        return page;
    }

    private IRenderedComponent<MaterialDetail> Open(string role)
    {
        SignIn(role);
        var page = Render<MaterialDetail>(parameters => parameters.Add(p => p.Id, PlateId));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);
        return page;
    }

    private async Task<MaterialView> Plate() => (await The<YardPage>().Material(PlateId, Cancellation))!;
}
