using Bunit;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Yard;
using MeltShop.Web.Pages.Ladles;

namespace MeltShop.Web.Tests.Pages.Ladles;

public sealed class LotFieldTests : LadleTest
{
    [Fact]
    public async Task Lot_ThatLiesInTheYard_IsChosenByAPressAndOneThatDoesNotIsSaid()
    {
        await BathSample();
        var alloy = (await Preparation()).Alloys.Single(m => m.Code == "magnesium-alloy-6");
        Assert.True((await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now, alloy.Id, StockKind.Received, 250) { Lot = "X-1" }, Cancellation)).Succeeded);
        SignIn(Role.Melter);
        var page = Render<LadlePreparation>(parameters => parameters.Add(p => p.HeatId, HeatId));
        page.WaitForElement("[data-field=alloyMaterialId] select", Patience);
        await page.InvokeAsync(() => page.Find("[data-field=alloyMaterialId] select").Change($"{alloy.Id}"));

        await page.InvokeAsync(() => page.WaitForElement("[data-lot='X-1']", Patience).Click());
        page.WaitForAssertion(() => Assert.Equal("X-1", page.Find("[data-field=alloyLot] input").GetAttribute("value")), Patience);
        Assert.Equal("true", page.Find("[data-lot='X-1']").GetAttribute("aria-pressed"));
        Assert.Empty(page.FindAll("[data-testid=lot-unknown]"));

        await page.InvokeAsync(() => page.Find("[data-field=alloyLot] input").Change("elsewhere"));
        Assert.NotNull(page.WaitForElement("[data-testid=lot-unknown]", Patience));
    }
}
