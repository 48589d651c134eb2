using Bunit;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>Another price for one charge.</summary>
public sealed class OtherPriceTests : ChargeTest
{
    [Fact]
    public void Price_EmptiedAgain_IsTheYardsAndNotNothing()
    {
        var page = OpenPlanned();
        var cost = page.Find("[data-testid=cost-per-tonne]").TextContent;
        Change(page, "Test steel");
        Type(page, "materials.steel.pricePerTonne", "900");
        WaitForPlan(page);
        page.WaitForAssertion(() => Assert.NotEqual(cost, page.Find("[data-testid=cost-per-tonne]").TextContent), Patience);
        Type(page, "materials.steel.pricePerTonne", "");
        WaitForPlan(page);

        page.WaitForAssertion(() => Assert.Equal(cost, page.Find("[data-testid=cost-per-tonne]").TextContent), Patience);
        Assert.Empty(page.FindAll("[data-price-asked], .field-error"));
    }
}
