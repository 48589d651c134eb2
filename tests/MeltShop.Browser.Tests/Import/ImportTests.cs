using System.Globalization;
using System.Text;
using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Import;

/// <summary>
/// Import with faults: a map is made by pointing at a file, a file with faulty rows is looked at, its sound sample is taken in, and the
/// same file again has nothing new. Owns no furnace: the sample is of the demo's finished heat, before its ladles.
/// </summary>
[Collection<DemoAppCollection>]
public sealed class ImportTests(Chromium chromium, RunningApp app)
{
    private const string Heat = "OTF-2026-0001";

    [Fact]
    public async Task File_WithFaultyRows_IsPreviewedTakenInAndKnownWhenItComesAgain()
    {
        var began = (long)(await app.ReadAsync($"SELECT StartedAt FROM Heats WHERE Number = '{Heat}'"))[0][0];
        var taken = new DateTimeOffset(began, TimeSpan.Zero).AddSeconds(90).ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture);
        var file = File("burns.csv", $"1;{Heat};{taken};3,61;1,52", $"1;{Heat};{taken};3,63;1,54", $"2;{Heat};{taken};3.61;1,52", $"3;OTF-1999-0001;{taken};3,61;1,52");
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        await MakeMapAsync(page, file);

        await page.OpenAsync("/import");
        await page.SelectOptionAsync("[data-testid=import-form] select", "browser story");
        await ChooseAsync(page, "#import-file", file);
        await Assertions.Expect(page.Locator("[data-testid=new]")).ToHaveTextAsync("2");
        await Assertions.Expect(page.Locator("[data-testid=refused-rows] tr[data-code='importNumber.otherSign']")).ToContainTextAsync("3.61");
        await Assertions.Expect(page.Locator("[data-testid=refused-rows] tr[data-code='heat.unknown']")).ToContainTextAsync("OTF-1999-0001");
        Assert.Empty(await Imported());
        await page.KeepStateAsync("import-preview");
        await page.BeAwayAsync(); // the file that was chosen is chosen again
        await Assertions.Expect(page.Locator("[data-testid=new]")).ToHaveTextAsync("2");
        await page.PressUntilAsync("[data-testid=accept]", "[data-testid=taken]");
        Assert.Equal(["3,61", "3,63"], (await Imported()).Select(row => row[0]));

        await ChooseAsync(page, "#import-file", file);
        await Assertions.Expect(page.Locator("[data-testid=known]")).ToHaveTextAsync("2");
        await page.WaitForSelectorAsync("[data-testid=nothing-new]");
    }

    private static async Task MakeMapAsync(IPage page, FilePayload file)
    {
        await page.OpenAsync("/import/map");
        await ChooseAsync(page, "#sample-file", file);
        await page.WaitForSelectorAsync("[data-testid=columns] tr[data-column='4']");
        foreach (var (path, text) in new[] { ("name", "browser story"), ("timeForm", "yyyy-MM-ddTHH:mm:ssK") })
        {
            await page.EnterAsync($"[data-field='{path}'] input", text);
        }

        foreach (var (path, choice) in new[]
        {
            ("instrument", "spark-1"), ("layout", "BurnPerRow"), ("decimalSign", "Comma"), ("usualKind", "LadleBase"), ("columns[0]", "SampleNumber"), ("columns[1]", "Heat"),
            ("columns[2]", "TakenAt"),
        })
        {
            await page.SelectOptionAsync($"[data-field='{path}'] select", choice);
        }

        await page.KeepStateAsync("import-map-filled");
        await page.PressUntilAsync("[data-testid=map-form] button[type=submit]", "[data-testid=map-saved]");
    }

    /// <summary>Nobody finds a file in the moment after its field was drawn, before the circuit listens to it.</summary>
    private static async Task ChooseAsync(IPage page, string field, FilePayload file)
    {
        await page.WaitForSelectorAsync(field, new() { State = WaitForSelectorState.Attached });
        await page.HeardAsync();
        await page.SetInputFilesAsync(field, file);
    }

    private Task<List<object[]>> Imported() => app.ReadAsync(
        "SELECT r.InstrumentText FROM ImportedSamples i JOIN Burns b ON b.SampleId = i.SampleId JOIN Readings r ON r.BurnId = b.Id WHERE r.Element = 'C' ORDER BY b.Ordinal");

    private static FilePayload File(string name, params string[] rows) =>
        new() { Name = name, MimeType = "text/csv", Buffer = Encoding.UTF8.GetBytes(string.Join("\n", rows.Prepend("Nr;Heat;Taken;C;Si"))) };
}
