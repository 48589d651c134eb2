using MeltShop.Records.Sites;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Units;

namespace MeltShop.Web.Tests.Components.Units;

public sealed class PriceTextTests : ComponentTest
{
    private static readonly ShopUnits Pounds = ShopUnits.Of(MassUnit.Pound, TemperatureUnit.Celsius);

    [Fact]
    public void Price_OfAShopOfKilograms_IsForATonne() => Assert.Equal("330.00\u00a0EUR/t", PriceText.Show(330, "EUR"));

    /// <summary>2000 lb are 907.18474 kg (NIST Special Publication 811, 2008, appendix B: short ton), so 330 for 1000 kg are 299.37.</summary>
    [Fact]
    public void Price_OfAShopOfPounds_IsForAShortTon()
    {
        Measure(Pounds);

        Assert.Equal("299.37\u00a0USD/sh tn", PriceText.Show(330, "USD"));
    }

    [Fact]
    public void Price_TypedForAShortTon_IsRecordedInHundredthsFor1000KgAndComesBack()
    {
        Measure(Pounds);
        for (var hundredths = -100_000_000; hundredths <= 100_000_000; hundredths += 9973)
        {
            var text = NumberText.Show(hundredths / 100.0, 2);
            var price = new EntryForm().PerTonne("price");
            price.Text = text;
            var recorded = PriceText.Recorded(price)!.Value;

            Assert.Equal(Math.Round(recorded, 2), recorded);
            Assert.Equal(text, PriceText.Number(recorded));
            Assert.Empty(PriceText.Check(price));
        }
    }

    [Fact]
    public void Price_WithThousandths_IsRefusedInTheUnitInWhichItWasTyped()
    {
        Measure(Pounds);
        var price = new EntryForm().PerTonne("price");
        price.Text = "450.1250";

        var found = Assert.Single(PriceText.Check(price));
        Assert.Equal(("price", "money.decimals"), (found.Path, found.Code));
    }
}
