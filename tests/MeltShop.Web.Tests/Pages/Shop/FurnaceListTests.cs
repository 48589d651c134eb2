using Bunit;
using MeltShop.Operations.Sites;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Sites;
using MeltShop.Web.Pages.Shop;

namespace MeltShop.Web.Tests.Pages.Shop;

/// <summary>The furnaces, as an administrator takes them in and says them anew.</summary>
public sealed class FurnaceListTests : ShopTest
{
    protected override async Task Prepare() =>
        Assert.True((await The<SetUpSite>().Run(Founder, new(Guid.NewGuid(), Now, "TB", "Talbrück", "Europe/Berlin", "EUR"), Cancellation)).Succeeded);

    [Fact]
    public async Task Furnace_TakenInAndThenSaidAnew_IsOnTheList()
    {
        var page = Open(Role.Administrator);
        Assert.NotNull(page.Find("[data-testid=no-furnace]"));
        page.Find("[data-testid=add-furnace]").Click();
        Type(page, ("code", "F1"), ("name", "Furnace 1"), ("capacityKg", "3000"), ("powerKw", "1800"));
        page.Find("[data-testid=furnace-form]").Submit();
        page.WaitForAssertion(() => Assert.Contains("3000\u00a0kg", page.Find("[data-furnace=F1]").TextContent, StringComparison.Ordinal), Patience);
        Assert.Contains("nobody said", page.Find("[data-furnace=F1]").TextContent, StringComparison.Ordinal);

        page.Find("[data-testid=set-furnace]").Click();
        Type(page, ("capacityKg", "2900"), ("highestC", "1550"));
        page.Find("[data-field=isActive] select").Change(bool.FalseString);
        page.Find("[data-testid=furnace-form]").Submit();

        page.WaitForAssertion(() => Assert.Contains("1550\u00a0°C", page.Find("[data-furnace=F1]").TextContent, StringComparison.Ordinal), Patience);
        Assert.NotNull(page.Find("[data-furnace=F1] .tag-watch"));
        Assert.Equal(2900, (await The<FurnacesPage>().Load(Cancellation)).Furnaces.Single().CapacityKg);
    }

    [Fact]
    public async Task Furnace_WithACodeThatIsTaken_IsRefusedAtItsFieldAndNothingTypedIsLost()
    {
        await The<AddFurnace>().Run(Founder, new(Guid.NewGuid(), Now, "F1", "Furnace 1", 3000, 1800), Cancellation);
        var page = Open(Role.Administrator);
        page.Find("[data-testid=add-furnace]").Click();
        Type(page, ("code", "F1"), ("name", "Furnace 2"), ("capacityKg", "4000"), ("powerKw", "2000"));
        page.Find("[data-testid=furnace-form]").Submit();

        page.WaitForAssertion(() => Assert.Equal("code.taken", page.Find("[data-field=code] .field-error").GetAttribute("data-code")), Patience);
        Assert.Equal("4000", page.Find("[data-field=capacityKg] input").GetAttribute("value"));
    }

    [Fact]
    public void Furnaces_ForAMetallurgist_AreReadOnly()
    {
        var page = Open(Role.Metallurgist);

        Assert.Contains("administrator", page.Find("[data-testid=read-only]").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("[data-testid=add-furnace]"));
    }

    private IRenderedComponent<FurnaceList> Open(string role)
    {
        SignIn(role);
        var page = Render<FurnaceList>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }

    private static void Type(IRenderedComponent<FurnaceList> page, params (string Path, string Text)[] fields)
    {
        foreach (var (path, text) in fields) page.Find($"[data-testid=furnace-form] [data-field={path}] input").Change(text);
    }
}
