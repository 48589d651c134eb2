using MeltShop.Browser.Tests.Looking;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Laboratory;

/// <summary>A coin that was put on the wrong heat, and a spectrometer that reads wrong. The program is their own, as they start heats.</summary>
public sealed class LaboratoryTests(RunningApp app, Chromium chromium) : IClassFixture<RunningApp>
{
    private const string Spark = "[data-instrument='spark-1']", Doubted = "[data-testid=doubted]", Reason = "typed at the wrong furnace";

    /// <summary>Furnaces 1 and 2.</summary>
    [Fact]
    public async Task Sample_OnTheWrongHeat_IsMovedWithAReasonAndBothHeatsShowIt()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        var (wrong, right) = (await page.StartHeatAsync("furnace-1"), await page.StartHeatAsync("furnace-2"));
        var (wrongNumber, rightNumber) = (await NumberAsync(page, wrong), await NumberAsync(page, right));
        await SampleAsync(page, wrong, "3,58");
        await Assertions.Expect(page.Locator("[data-testid=steps]")).ToHaveAttributeAsync("data-state", "Bath");

        await page.PressUntilAsync("[data-testid=timeline] li[data-kind=Sample] button.press", "[data-testid=fact-correction]");
        await page.Locator("[data-testid=fact-correction] [data-field=heatId] select").SelectOptionAsync(new SelectOptionValue { Value = right.Split('/')[^1] });
        await page.PressUntilAsync("[data-testid=fact-correction] button[type=submit]", "[data-testid=fact-correction] [data-field=reason] .field-error");
        await page.KeepStateAsync("heat-sample-moved-without-reason");
        await page.EnterAsync("[data-testid=fact-correction] [data-field=reason] input", Reason);
        await page.PressUntilGoneAsync("[data-testid=fact-correction] button[type=submit]", "[data-testid=fact-correction]");

        var left = page.Locator("[data-testid=timeline] li[data-kind=Sample]");
        await Assertions.Expect(left).ToContainTextAsync(rightNumber);
        await Assertions.Expect(left).ToContainTextAsync(Reason);
        await Assertions.Expect(page.Locator("[data-testid=sample]")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("[data-testid=steps]")).ToHaveAttributeAsync("data-state", "Charging");
        await page.OpenAsync(right);
        await Assertions.Expect(page.Locator("[data-testid=sample]")).ToContainTextAsync("3.58");
        var moved = page.Locator("[data-testid=timeline] li[data-kind=Sample]");
        await Assertions.Expect(moved).ToContainTextAsync(wrongNumber);
        await Assertions.Expect(moved).ToContainTextAsync(Reason);
        await Assertions.Expect(page.Locator("[data-testid=steps]")).ToHaveAttributeAsync("data-state", "Bath");
    }

    /// <summary>Furnace 3.</summary>
    [Fact]
    public async Task ControlSample_OutOfLimits_IsSaidAtTheNextSampleAndListsTheHeatsToCheckAgain()
    {
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        await SetAsync(page);
        var instrument = await page.Locator($"{Spark} a").GetAttributeAsync("href") ?? "";
        await CheckAsync(page, instrument, "3,30", "good");
        var heat = await page.StartHeatAsync("furnace-3", 1500);
        await SampleAsync(page, heat, "3,61");
        await Assertions.Expect(page.Locator("[data-testid=sample] [data-check=good]")).ToHaveCountAsync(1);

        await CheckAsync(page, instrument, "3,45", "outside");
        await Assertions.Expect(page.Locator($"{Doubted} [data-heat]")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator($"{Doubted} a[href='{heat}']")).ToBeVisibleAsync();
        await SampleAsync(page, heat, "3,63");
        await Assertions.Expect(page.Locator("[data-testid=sample] [data-check=outside]")).ToContainTextAsync("outside its action limits");
        await Assertions.Expect(page.Locator("[data-testid=sample] [data-check=good]")).ToHaveCountAsync(1);

        // A good check afterwards does not make good what was measured before it.
        await CheckAsync(page, instrument, "3,31", "good");
        await Assertions.Expect(page.Locator($"{Doubted} [data-heat]")).ToContainTextAsync("2 samples");
        await page.KeepStateAsync("instrument-doubted");
        await page.PressUntilAsync($"{Doubted} [data-testid=to-recall]", "[data-testid=recall-head]");
        await page.IsAtAsync("/recall?from=Instrument&of=spark-1&since=*&until=*");
    }

    private static async Task<string> NumberAsync(IPage page, string heat)
    {
        await page.OpenAsync(heat);
        return (await page.Locator("[data-testid=heat-number]").InnerTextAsync()).Trim();
    }

    private static async Task SampleAsync(IPage page, string heat, string carbon)
    {
        await page.OpenSampleAsync(heat);
        await page.EnterAsync("[data-cell='0.C']", carbon);
        await page.EnterAsync("[data-cell='0.Si']", "1,52");
        await page.PressUntilAsync("[data-testid=sample-form] button[type=submit]", "[data-testid=sample-saved]");
    }

    /// <summary>Says what one result of the demo's spectrometer scatters by, and takes in a piece to check it on.</summary>
    private static async Task SetAsync(IPage page)
    {
        await page.OpenAsync("/laboratory");
        await page.OpenFormAsync("[data-testid=add-reference]", "[data-testid=reference-form]");
        var block = "[data-testid=reference-form] ";
        foreach (var (path, text) in new[] { ("=code", "block-1"), ("=name", "White iron block"), ("=certificate", "invented for a test"), ("$='.element'", "C"), ("$='.first'", "3,30"), ("$='.second'", "0,02") })
        {
            await page.EnterAsync($"{block}[data-field{path}] input", text);
        }

        await page.PressUntilAsync(block + "button[type=submit]", "[data-reference='block-1']");
        await page.PressUntilAsync($"{Spark} a", "[data-testid=set-instrument]");
        await page.PressUntilAsync("[data-testid=set-instrument]", "[data-testid=instrument-form]");
        await page.EnterAsync("[data-testid=instrument-form] [data-row=C] [data-field$='.first'] input", "0,02");
        await page.EnterAsync("[data-testid=instrument-form] [data-field=figuresSource] input", "invented for a test");
        await page.PressUntilGoneAsync("[data-testid=instrument-form] button[type=submit]", "[data-testid=instrument-form]");
        await Assertions.Expect(page.Locator("[data-testid=elements] tr[data-element=C]")).ToContainTextAsync("0.02");
        await page.OpenAsync("/laboratory");
    }

    private static async Task CheckAsync(IPage page, string instrument, string carbon, string found)
    {
        await page.OpenAsync(instrument);
        await page.OpenFormAsync("[data-testid=check-instrument]", "[data-testid=control-form]");
        await page.Locator("[data-testid=control-form] [data-field=referenceMaterialId] select").SelectOptionAsync(new SelectOptionValue { Label = "White iron block" });
        await page.EnterAsync("[data-testid=control-form] [data-cell='0.C']", carbon);
        await page.PressUntilAsync("[data-testid=control-form] button[type=submit]", "[data-testid=check-saved]");
        await page.WaitForSelectorAsync($".page-head [data-check={found}]");
    }
}
