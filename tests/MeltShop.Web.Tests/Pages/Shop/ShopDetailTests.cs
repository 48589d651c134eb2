using Bunit;
using MeltShop.Operations.Grades;
using MeltShop.Operations.People;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Yard;
using MeltShop.Records.Grades;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Sites;
using MeltShop.Records.Sites;
using MeltShop.Records.Yard;
using MeltShop.Web.Pages.Floor;
using MeltShop.Web.Pages.Shop;
using MeltShop.Web.Pages.Yard;

namespace MeltShop.Web.Tests.Pages.Shop;

/// <summary>The page of the shop on its first day: who sets it up, and what it still lacks.</summary>
public sealed class ShopDetailTests : ShopTest
{
    protected override Task Prepare() => Task.CompletedTask;

    [Fact]
    public async Task Site_SetUpByAnAdministrator_IsRecordedAndGoesFromTheList()
    {
        var page = Open(Role.Administrator);
        Assert.Equal(["Site", "Furnace", "Grade", "Material", "Ladle", "People"], Steps(page));
        Fill(page);
        page.Find("[data-testid=site-form]").Submit();

        page.WaitForAssertion(() => Assert.Equal(["Furnace", "Grade", "Material", "Ladle", "People"], Steps(page)), Patience);
        Assert.Equal("Melting House Talbrück", page.Find("[data-testid=site] h2").TextContent);
        var site = (await The<SitePage>().Load(Cancellation))!;
        Assert.Equal(new SiteView("TB", "Melting House Talbrück", "USD", "America/Chicago", MassUnit.Pound, TemperatureUnit.Fahrenheit), site);
    }

    [Fact]
    public async Task Site_WrongCurrency_IsRefusedAtItsFieldAndNothingTypedIsLost()
    {
        var page = Open(Role.Administrator);
        Fill(page);
        page.Find("[data-field=currency] input").Change("usd");
        page.Find("[data-testid=site-form]").Submit();

        page.WaitForAssertion(() => Assert.Equal("currency.unknown", page.Find("[data-field=currency] .field-error").GetAttribute("data-code")), Patience);
        Assert.Equal("Melting House Talbrück", page.Find("[data-field=name] input").GetAttribute("value"));
        Assert.Null(await The<SitePage>().Load(Cancellation));
    }

    [Fact]
    public async Task Site_PutRightBeforeAnythingHasAPrice_MayHaveAnotherCurrency()
    {
        await The<SetUpSite>().Run(Founder, new(Guid.NewGuid(), Now, "TB", "Talbrück", "Europe/Berlin", "EUR"), Cancellation);
        var page = Open(Role.Administrator);
        page.Find("[data-testid=set-site]").Click();
        page.Find("[data-testid=site-change] [data-field=currency] input").Change("CHF");
        page.Find("[data-testid=site-change]").Submit();

        page.WaitForAssertion(() => Assert.Contains("CHF", page.Find("[data-testid=site] dl").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal("CHF", (await The<SitePage>().Load(Cancellation))!.Currency);
    }

    /// <summary>No zone, currency or unit is taken for granted.</summary>
    [Fact]
    public void Site_HandedInEmpty_AsksForEachOfItsFields()
    {
        var page = Open(Role.Administrator);
        page.Find("[data-testid=site-form]").Submit();

        page.WaitForAssertion(() => Assert.Equal(
            ["name", "code", "timeZone", "currency", "mass", "temperature"],
            page.FindAll("[data-testid=site-form] .field-wrong").Select(field => field.GetAttribute("data-field"))), Patience);
    }

    [Fact]
    public void Shop_NotSetUp_SaysToAMetallurgistWhoDoesIt()
    {
        var page = Open(Role.Metallurgist);

        Assert.Empty(page.FindAll("form"));
        Assert.Contains("administrator", page.Find("[data-testid=read-only]").TextContent, StringComparison.Ordinal);
        Assert.Equal("/yard/new", page.Find("[data-step=Material] a").GetAttribute("href"));
    }

    [Fact]
    public async Task FirstSteps_WhenAllIsThere_AreGone()
    {
        await The<SetUpSite>().Run(Founder, new(Guid.NewGuid(), Now, "TB", "Talbrück", "Europe/Berlin", "EUR"), Cancellation);
        await The<AddFurnace>().Run(Founder, new(Guid.NewGuid(), Now, "F1", "Furnace 1", 3000, 1800), Cancellation);
        await The<AddGrade>().Run(Founder, new(Guid.NewGuid(), Now, "test", IronFamily.Grey, "test", [new(WindowStage.Furnace, "C", 3.2, null, 3.4)], null), Cancellation);
        await The<AddMaterial>().Run(Founder, new(
            Guid.NewGuid(), Now, "pig", "Pig", MaterialKind.PigIron, MaterialUses.Charge, 400, 98, [new("C", 4.2)], "test", "memory"), Cancellation);
        await The<AddLadle>().Run(Founder, new(Guid.NewGuid(), Now, "L1", "Ladle", "sandwich", 1100, 40, 50, null, 0.001, 5, "test"), Cancellation);
        var page = Open(Role.Administrator);
        Assert.Equal(["People"], Steps(page));
        Assert.Contains("melter, metallurgist, supervisor, inspector, administrator", page.Find("[data-step=People]").TextContent, StringComparison.Ordinal);

        await The<AddPerson>().Run(Founder, new(Guid.NewGuid(), Now, "all", "Everybody", Role.All) { Password = Password }, Cancellation);

        page.WaitForAssertion(() => Assert.Empty(page.FindAll("[data-testid=first-steps]")), Patience);
    }

    [Fact]
    public void Floor_OfAShopThatIsNotSetUp_LeadsThere()
    {
        SignIn(Role.All.ToArray());
        var page = Render<ShopFloor>();

        Assert.Equal("/shop", page.Find("[data-testid=site-missing] a").GetAttribute("href"));
    }

    /// <summary>A price has a currency, or it is none.</summary>
    [Fact]
    public void NewMaterial_OfAShopThatIsNotSetUp_LeadsThereInsteadOfAskingForAPrice()
    {
        SignIn(Role.Metallurgist);
        var page = Render<NewMaterial>();

        Assert.NotNull(page.Find("[data-testid=site-missing]"));
        Assert.Empty(page.FindAll("form"));
    }

    private static IEnumerable<string?> Steps(IRenderedComponent<ShopDetail> page) => page.FindAll("[data-step]").Select(step => step.GetAttribute("data-step"));

    private IRenderedComponent<ShopDetail> Open(string role)
    {
        SignIn(role);
        var page = Render<ShopDetail>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }

    private static void Fill(IRenderedComponent<ShopDetail> page)
    {
        foreach (var (path, text) in new[] { ("name", "Melting House Talbrück"), ("code", "TB"), ("currency", "USD") }) page.Find($"[data-field={path}] input").Change(text);
        foreach (var (path, choice) in new[] { ("timeZone", "America/Chicago"), ("mass", nameof(MassUnit.Pound)), ("temperature", nameof(TemperatureUnit.Fahrenheit)) })
            page.Find($"[data-testid=site-form] [data-field={path}] select").Change(choice);
    }
}
