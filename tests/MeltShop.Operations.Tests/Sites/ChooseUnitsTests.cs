using MeltShop.Operations.Drafts;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Reading.Sites;
using MeltShop.Records.Sites;

namespace MeltShop.Operations.Tests.Sites;

/// <summary>The shop's units are the administrator's choice, on both databases; nothing that is recorded changes with it.</summary>
public sealed class ChooseUnitsTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Units_ChosenTwice_AreTheLastOnesAndNobodysBefore(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        Assert.Equal((MassUnit.Kilogram, TemperatureUnit.Celsius), await Now(shop));
        var choice = new ChooseUnits.Command(Guid.NewGuid(), shop.Now, MassUnit.Pound, TemperatureUnit.Fahrenheit);

        await Shop.Do(shop.Get<ChooseUnits>(), shop.Administrator, choice);
        await Shop.Do(shop.Get<ChooseUnits>(), shop.Administrator, choice);

        Assert.Equal((MassUnit.Pound, TemperatureUnit.Fahrenheit), await Now(shop));
        await using var db = shop.Db();
        Assert.Equal(1, db.TrailRows.Count(row => row.Operation == nameof(ChooseUnits)));
    }

    [Fact]
    public async Task Units_ChosenByAMelter_StayAsTheyWere()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);

        await shop.Refuses(
            shop.Get<ChooseUnits>(), shop.Melter, new(Guid.NewGuid(), shop.Now, MassUnit.Pound, TemperatureUnit.Celsius), "", "right.missing");

        Assert.Equal((MassUnit.Kilogram, TemperatureUnit.Celsius), await Now(shop));
    }

    [Fact]
    public async Task Units_ThatDoNotExist_AreRefusedAtTheirFields()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);

        await shop.Refuses(shop.Get<ChooseUnits>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, (MassUnit)7, TemperatureUnit.Celsius), "mass", "choice.unknown");
    }

    /// <summary>A draft is a text without a unit: it would be read in the other one.</summary>
    [Fact]
    public async Task TemperatureUnit_WhileAFigureIsBeingTyped_IsNotChanged()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await shop.Get<KeepDraft>().Run(shop.Melter, new("heat/1/sample", "figures.LiquidusC", "1168", null), Soon);

        await shop.Refuses(
            shop.Get<ChooseUnits>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, MassUnit.Pound, TemperatureUnit.Fahrenheit), "temperature", "units.drafts");
        await Shop.Do(shop.Get<ChooseUnits>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, MassUnit.Pound, TemperatureUnit.Celsius));

        Assert.Equal((MassUnit.Pound, TemperatureUnit.Celsius), await Now(shop));
    }

    private static async Task<(MassUnit, TemperatureUnit)> Now(Shop shop)
    {
        var site = (await shop.Get<SitePage>().Load(Soon))!;
        return (site.MassUnit, site.TemperatureUnit);
    }
}
