using Bunit;
using MeltShop.Operations.Sites;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Sites;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Components.Units;
using MeltShop.Web.Pages.Yard;

namespace MeltShop.Web.Tests.Pages.Yard;

/// <summary>A shop that weighs in pounds buys by the short ton.</summary>
public sealed class PriceInPoundsTests : YardTest
{
    [Fact]
    public async Task Units_ChosenElsewhere_AreThoseOfAPageThatIsOpen()
    {
        ShopUnits.Speak(() => The<ShopSite>().Units);
        SignIn(Role.Supervisor);
        var page = Render<MaterialDetail>(parameters => parameters.Add(p => p.Id, PlateId));
        page.WaitForState(() => page.Find("[data-testid=price]").TextContent == "330.00\u00a0EUR/t", Patience);

        await The<ChooseUnits>().Run(Founder, new(Guid.NewGuid(), Now, MassUnit.Pound, TemperatureUnit.Celsius), Cancellation);

        page.WaitForState(() => page.Find("[data-testid=price]").TextContent == "299.37\u00a0EUR/sh tn", Patience);
    }

    [Fact]
    public async Task Price_TypedForAShortTon_IsKeptFor1000KgAndShownAsItWasTyped()
    {
        Measure(ShopUnits.Of(MassUnit.Pound, TemperatureUnit.Celsius));
        SignIn(Role.Supervisor);
        var page = Render<MaterialDetail>(parameters => parameters.Add(p => p.Id, PlateId));
        page.WaitForState(() => page.FindAll("button").Any(button => button.TextContent == "Change the price"));
        Assert.Equal("299.37\u00a0EUR/sh tn", page.Find("[data-testid=price]").TextContent);
        page.Do(() => page.FindAll("button").Single(button => button.TextContent == "Change the price").ClickAsync());
        page.WaitForElement("[data-field=pricePerTonne] input").Change("450.1250");
        await page.Find("[data-testid=price-form]").SubmitAsync();
        page.WaitForElement("[data-field=pricePerTonne] .field-error[data-code='money.decimals']");

        page.Find("[data-field=pricePerTonne] input").Change("450.12");
        await page.Find("[data-testid=price-form]").SubmitAsync();
        page.WaitForState(() => page.Find("[data-testid=price]").TextContent == "450.12\u00a0EUR/sh tn");
        Assert.Equal(496.17m, (await The<YardPage>().Material(PlateId, Cancellation))!.PricePerTonne); // 450.12 ÷ 0.90718474 = 496.172
    }
}
