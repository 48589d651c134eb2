using MeltShop.Operations.Sites;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Reading.Sites;
using MeltShop.Records.Sites;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Sites;

/// <summary>A shop is named once, and what it lacks before its first heat is told, on both databases.</summary>
public sealed class SetUpTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task SetUp_OfAShopWithoutALadle_LacksTheLadleAlone(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        Assert.Empty((await shop.Get<SetUpPage>().Load(Soon)).Missing);
        await using var db = shop.Db();
        await db.Ladles.ExecuteUpdateAsync(l => l.SetProperty(x => x.IsActive, false), Soon);
        await shop.Get<AddLadle>().Run(shop.Administrator, new(
            Guid.NewGuid(), shop.Now, "trough", "Trough", "trough", 500, 0, 0, null, 0.001, 5, "invented for a test"), Soon);

        Assert.Equal([SetUpStep.Ladle], (await shop.Get<SetUpPage>().Load(Soon)).Missing);
    }

    [Fact]
    public async Task SetUp_WhereNothingCanBeUsed_LacksAllOfIt()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await using var db = shop.Db();
        await db.Sites.ExecuteDeleteAsync(Soon);
        await db.Furnaces.ExecuteUpdateAsync(f => f.SetProperty(x => x.IsActive, false), Soon);
        await db.GradeWindows.Where(w => w.Stage == Records.Grades.WindowStage.Furnace).ExecuteDeleteAsync(Soon);
        await db.Materials.ExecuteUpdateAsync(m => m.SetProperty(x => x.MetallicYieldPercent, (double?)null), Soon);
        await db.Ladles.ExecuteUpdateAsync(l => l.SetProperty(x => x.IsActive, false), Soon);
        await db.Users.Where(p => p.UserName == "the-melter").ExecuteUpdateAsync(p => p.SetProperty(x => x.IsActive, false), Soon);

        var view = await shop.Get<SetUpPage>().Load(Soon);

        Assert.Null(view.Site);
        Assert.Equal([SetUpStep.Site, SetUpStep.Furnace, SetUpStep.Grade, SetUpStep.Material, SetUpStep.Ladle, SetUpStep.People], view.Missing);
        Assert.Equal(["melter"], view.RolesWithout);
    }

    [Fact]
    public async Task Site_WrongInput_IsRefusedAtItsField()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var operation = shop.Get<SetUpSite>();
        var command = new SetUpSite.Command(Guid.NewGuid(), shop.Now, "TB", "Talbrück", "Europe/Berlin", "EUR");

        await shop.Refuses(operation, shop.Metallurgist, command, "", "right.missing");
        await shop.Refuses(operation, shop.Administrator, command with { Code = "T-B" }, "code", "code.letters");
        await shop.Refuses(operation, shop.Administrator, command with { TimeZone = "Europe/Nowhere" }, "timeZone", "timeZone.unknown");
        await shop.Refuses(operation, shop.Administrator, command with { Currency = "eur" }, "currency", "currency.unknown");
        await shop.Refuses(operation, shop.Administrator, command with { Mass = (MassUnit)7 }, "mass", "choice.unknown");
        await shop.Refuses(operation, shop.Administrator, command, "code", "site.exists");
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Site_PutRight_HasTheNewNameAndZoneButKeepsTheCurrencyOfItsPrices(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (seen, said) = (new SetSite.Said("Talbrück", "Europe/Berlin", "EUR"), new SetSite.Said("Talbruck", "America/Chicago", "EUR"));
        var command = new SetSite.Command(Guid.NewGuid(), shop.Now, seen, said);

        await shop.Refuses(shop.Get<SetSite>(), shop.Supervisor, command, "", "right.missing");
        await shop.Refuses(shop.Get<SetSite>(), shop.Administrator, command with { Site = said with { TimeZone = "" } }, "timeZone", "timeZone.unknown");
        await shop.Refuses(shop.Get<SetSite>(), shop.Administrator, command with { Site = said with { Currency = "USD" } }, "currency", "currency.used");
        await Shop.Do(shop.Get<SetSite>(), shop.Administrator, command);

        var site = (await shop.Get<SitePage>().Load(Soon))!;
        Assert.Equal(("TB", "Talbruck", "America/Chicago", "EUR"), (site.Code, site.Name, site.TimeZone, site.Currency));
        await shop.Refuses(shop.Get<SetSite>(), shop.Administrator, command with { EntryKey = Guid.NewGuid() }, "version", "version.stale");
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Furnace_SaidAnew_HasTheNewFiguresAndTheOldVersionIsRefused(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var before = await Furnace(shop);
        var command = new SetFurnace.Command(Guid.NewGuid(), shop.Now, before.Id, before.Version, "Furnace 1, relined", 2900, 1750, 1550, true);

        await Shop.Do(shop.Get<SetFurnace>(), shop.Administrator, command);

        var after = await Furnace(shop);
        Assert.Equal(("Furnace 1, relined", 2900, 1750, 1550, true), (after.Name, after.CapacityKg, after.PowerKw, after.HighestC, after.IsActive));
        await shop.Refuses(shop.Get<SetFurnace>(), shop.Administrator, command with { EntryKey = Guid.NewGuid() }, "version", "version.stale");
    }

    [Fact]
    public async Task Furnace_WithAHeatInIt_IsNotTakenOutOfUse()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var heat = await shop.StartHeat();
        var seen = await Furnace(shop);
        var command = new SetFurnace.Command(Guid.NewGuid(), shop.Now, seen.Id, seen.Version, seen.Name, seen.CapacityKg, seen.PowerKw, null, false);

        await shop.Refuses(shop.Get<SetFurnace>(), shop.Melter, command, "", "right.missing");
        var findings = await shop.Refuses(shop.Get<SetFurnace>(), shop.Administrator, command, "isActive", "furnace.busy");
        await shop.Refuses(shop.Get<SetFurnace>(), shop.Administrator, command with { CapacityKg = 0 }, "capacityKg", "mass.zero");

        Assert.Equal([heat.Number], findings[0].Arguments);
    }

    private static async Task<FurnaceFigures> Furnace(Shop shop) => (await shop.Get<FurnacesPage>().Load(Soon)).Furnaces.Single();
}
