using Bunit;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Importing;
using MeltShop.Records.Writing;
using MeltShop.Web.Pages.Import;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace MeltShop.Web.Tests.Pages.Import;

public sealed class MapMakingTests : ImportTest
{
    [Fact]
    public async Task Map_MadeByPointingAtAFile_IsKept()
    {
        var page = Open();
        Type(page, "name", "second map");
        Pick(page, "instrument", "spark");
        Pick(page, "layout", "MeanPerRow");
        Pick(page, "decimalSign", "Comma");
        Pick(page, "usualKind", "LastMetal");
        foreach (var (place, role) in new[] { ("0", "Coin"), ("1", "Furnace"), ("2", "TakenAt") }) Pick(page, $"columns[{place}]", role);
        await page.InvokeAsync(() => page.Find("form").Submit());
        page.WaitForState(() => page.FindAll("[data-testid=map-saved]").Count > 0, Patience);

        var kept = (await The<ImportPage>().Load(Cancellation)).Maps.Single(m => m.Name == "second map");
        var map = RecordsJson.Value<ColumnMap>(kept.Definition)!;
        Assert.Equal(('\t', RowLayout.MeanPerRow, DecimalSign.Comma), (map.Separator, map.Layout, map.DecimalSign));
        Assert.Equal(
            [new(0, "Coin", ColumnRole.Coin), new(1, "Furnace", ColumnRole.Furnace), new(2, "Taken", ColumnRole.TakenAt), new(3, "C %", ColumnRole.Element, "C"), new MappedColumn(4, "Mg ppm", ColumnRole.Element, "Mg", ElementUnit.PartsPerMillion)],
            map.Columns);
    }

    [Fact]
    public async Task Map_WithoutATime_IsRefusedAndKeepsWhatWasSaid()
    {
        var page = Open();
        Type(page, "name", "third map");
        Pick(page, "instrument", "spark");
        Pick(page, "layout", "BurnPerRow");
        Pick(page, "decimalSign", "Point");
        Pick(page, "columns[0]", "Coin");
        await page.InvokeAsync(() => page.Find("form").Submit());
        page.WaitForState(() => page.FindAll("[data-testid=findings] li").Count > 0, Patience);

        Assert.Contains("importMap.noTime", page.FindAll("[data-testid=findings] li").Select(li => li.GetAttribute("data-code")));
        Assert.Equal("Coin", page.Find("[data-field=\"columns[0]\"] option[selected]").GetAttribute("value"));
    }

    [Fact]
    public async Task Map_Kept_IsChangedTakenOutOfUseAndTakenBack()
    {
        async Task<ImportMapView> Kept() => (await The<ImportPage>().Load(Cancellation)).Maps.Single(m => m.Name == "burns");
        var page = await OpenKept();
        Assert.Equal(["SampleNumber", "Heat", "TakenAt", "C", "Si"], page.FindAll("[data-testid=columns] tr[data-column]").Select(row => row.QuerySelector("option[selected]")!.GetAttribute("value")));
        Pick(page, "columns[4]", "LiquidusC");
        await page.InvokeAsync(() => page.Find("form").Submit());
        page.WaitForState(() => The<NavigationManager>().Uri.EndsWith("/import", StringComparison.Ordinal), Patience);
        Assert.Equal(new(4, "Si", ColumnRole.Figure, Figure: FigureQuantity.LiquidusC), RecordsJson.Value<ColumnMap>((await Kept()).Definition)!.Columns[4]);

        page = await OpenKept();
        await page.InvokeAsync(() => page.Find("[data-testid=end-map]").Click());
        page.WaitForState(() => The<NavigationManager>().Uri.EndsWith("/import", StringComparison.Ordinal), Patience);
        Assert.False((await Kept()).IsActive);
        var list = OpenImport();
        list.WaitForElement("[data-map=burns] .tag", Patience);

        page = await OpenKept();
        Assert.Empty(page.FindAll("[data-testid=end-map]"));
        await page.InvokeAsync(() => page.Find("form").Submit());
        page.WaitForState(() => The<NavigationManager>().Uri.EndsWith("/import", StringComparison.Ordinal), Patience);
        Assert.True((await Kept()).IsActive);

        async Task<IRenderedComponent<MapMaking>> OpenKept()
        {
            SignIn(Role.Metallurgist);
            The<NavigationManager>().NavigateTo($"/import/map?of={(await Kept()).Id}");
            var opened = Render<MapMaking>();
            opened.WaitForState(() => opened.FindAll("[data-testid=columns] tr[data-column]").Count == 5, Patience);
            return opened;
        }
    }

    private IRenderedComponent<MapMaking> Open()
    {
        SignIn(Role.Metallurgist);
        The<NavigationManager>().NavigateTo("/import/map");
        var page = Render<MapMaking>();
        page.WaitForState(() => page.FindAll("[data-testid=map-form]").Count > 0, Patience);
        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("Coin\tFurnace\tTaken\tC %\tMg ppm\nK1\tF1\t2026-03-02 07:00:00\t3,61\t410\n", "sample.txt"));
        page.WaitForState(() => page.FindAll("[data-testid=columns] tr[data-column]").Count == 5, Patience);
        return page;
    }

    private static void Type(IRenderedComponent<MapMaking> page, string path, string text) => page.Find($"[data-field=\"{path}\"] input").Change(text);

    private static void Pick(IRenderedComponent<MapMaking> page, string path, string value) => page.Find($"[data-field=\"{path}\"] select").Change(value);
}
