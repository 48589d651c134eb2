using Bunit;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Pages.Yard;

namespace MeltShop.Web.Tests.Pages.Yard;

public sealed class OutdatedPriceTests : YardTest
{
    [Fact]
    public async Task Price_ChangedTwiceMeanwhile_SaysByWhomFromWhatToWhatAndKeepsWhatWasTyped()
    {
        SignIn(Role.Supervisor);
        var page = Render<MaterialDetail>(parameters => parameters.Add(p => p.Id, PlateId));
        page.WaitForState(() => page.FindAll("button").Any(button => button.TextContent == "Change the price"));
        page.Do(() => page.FindAll("button").Single(button => button.TextContent == "Change the price").ClickAsync());
        page.WaitForElement("[data-field=pricePerTonne] input").Change("360");
        await Change(Founder with { PersonName = "Ida Anders" }, 350);
        await Change(Founder with { PersonName = "Jan Berg" }, 355.5m);

        await page.Find("[data-testid=price-form]").SubmitAsync();

        page.WaitForState(() => page.FindAll("[data-testid=what-changed] [data-column=PricePerTonne]").Count == 2);
        var told = page.Find("[data-testid=what-changed]");
        Assert.Equal(
            ["price: 330.00\u00a0EUR/t → 350.00\u00a0EUR/t", "price: 350.00\u00a0EUR/t → 355.50\u00a0EUR/t"],
            told.QuerySelectorAll("[data-column=PricePerTonne]").Select(line => line.TextContent));
        Assert.Matches("Ida Anders, .+: changed the price", told.QuerySelectorAll("p")[0].TextContent);
        Assert.Matches("Jan Berg, .+: changed the price", told.QuerySelectorAll("p")[1].TextContent);
        Assert.Equal("360", page.Find("[data-field=pricePerTonne] input").GetAttribute("value"));
    }

    private async Task Change(Operations.Acting by, decimal price)
    {
        var version = (await The<YardPage>().Material(PlateId, Cancellation))!.Version;
        Assert.True((await The<ChangePrice>().Run(by, new(Guid.NewGuid(), Now, PlateId, version, price), Cancellation)).Succeeded);
    }
}
