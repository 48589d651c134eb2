using Bunit;
using MeltShop.Operations.Sites;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Records.Yard;
using MeltShop.Web.Pages.Yard;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Tests.Pages.Yard;

/// <summary>A material that the yard does not know yet, with its analysis.</summary>
public sealed class NewMaterialTests : ShopTest
{
    private NavigationManager Addresses => The<NavigationManager>();

    [Fact]
    public async Task Material_TypedInFull_LiesInTheYardAndTheWayGoesBackToTheCharge()
    {
        var page = Open("/yard/new?back=%2Fcharge%3Ffurnace%3DF1");
        Fill(page);
        page.Find("[data-caution=galvanised]").Change(true);
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.EndsWith("/charge?furnace=F1", Addresses.Uri, StringComparison.Ordinal), Patience);
        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        var material = await db.Materials.SingleAsync(Cancellation);
        Assert.Equal(("clippings", MaterialKind.SteelScrap, MaterialUses.Charge, 310m, 96.5, "galvanised"), (material.Code, material.Kind, material.Uses, material.PricePerTonne, material.MetallicYieldPercent, material.Cautions));
        var analysis = await db.MaterialAnalyses.Include(a => a.Percents).SingleAsync(a => a.Id == material.AnalysisId, Cancellation);
        Assert.Equal(("Mn", 0.4, 0.1), (analysis.Percents[0].Element.Symbol, analysis.Percents[0].Percent, analysis.Percents[0].Spread));
    }

    [Fact]
    public async Task Yield_OfNothing_IsRefusedAtItsFieldAndNothingIsLost()
    {
        var page = Open("/yard/new");
        Fill(page);
        Type(page, "metallicYieldPercent", "0");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Equal("yield.zero", page.Find("[data-field=metallicYieldPercent] .field-error").GetAttribute("data-code")), Patience);
        Assert.Equal("clippings", page.Find("[data-field=code] input").GetAttribute("value"));
        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        Assert.Empty(await db.Materials.ToListAsync(Cancellation));
    }

    [Fact]
    public async Task Yield_LeftEmpty_IsNotKnownAndNoFigureIsMadeUp()
    {
        var page = Open("/yard/new");
        Fill(page);
        Type(page, "metallicYieldPercent", "");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("/yard/", Addresses.Uri, StringComparison.Ordinal), Patience);
        page.WaitForAssertion(() => Assert.DoesNotContain("/new", Addresses.Uri, StringComparison.Ordinal), Patience);
        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        Assert.Null((await db.Materials.SingleAsync(Cancellation)).MetallicYieldPercent);
    }

    [Fact]
    public void Cautions_ThatCanBeSaid_AllHaveTheirWords() =>
        Assert.All(Open("/yard/new").FindAll("label.tick"), label => Assert.DoesNotContain("Caution.", label.TextContent, StringComparison.Ordinal));

    [Fact]
    public void WayBack_ToAnywhereElse_IsTheYard() =>
        Assert.Equal("/yard", Open("/yard/new?back=https%3A%2F%2Felsewhere.example").Find(".way-back a").GetAttribute("href"));

    [Fact]
    public void Material_ForAMelter_IsNotOffered()
    {
        var page = Open("/yard/new", Role.Melter);

        Assert.Empty(page.FindAll("form"));
        Assert.NotNull(page.Find("[data-testid=read-only]"));
    }

    protected override async Task Prepare() =>
        Assert.True((await The<SetUpSite>().Run(Founder, new(Guid.NewGuid(), Now, "TB", "Talbrück", "Europe/Berlin", "EUR"), Cancellation)).Succeeded);

    private IRenderedComponent<NewMaterial> Open(string address, string role = Role.Metallurgist)
    {
        SignIn(role);
        Addresses.NavigateTo(address);
        var page = Render<NewMaterial>();
        page.WaitForState(() => page.FindAll("form, [data-testid=read-only]").Count > 0, Patience);
        return page;
    }

    private static void Fill(IRenderedComponent<NewMaterial> page)
    {
        foreach (var (path, text) in new[] { ("code", "clippings"), ("name", "Test clippings"), ("pricePerTonne", "310"), ("metallicYieldPercent", "96.5"), ("source", "from memory") }) Type(page, path, text);
        page.Find("[data-field=kind] select").Change(nameof(MaterialKind.SteelScrap));
        page.Find("[data-field=sourceKind] select").Change("memory");
        foreach (var (path, text) in new[] { ("element", "Mn"), ("percent", "0.4"), ("spread", "0.1") }) page.Find($".analysis-row [data-field$=\".{path}\"] input").Change(text);
    }

    private static void Type(IRenderedComponent<NewMaterial> page, string path, string text) => page.Find($"[data-field={path}] input").Change(text);
}
