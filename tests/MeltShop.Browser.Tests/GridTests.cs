using System.Globalization;
using MeltShop.Browser.Tests.Running;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests;

/// <summary>A coin of three burns and twelve elements, typed by the keyboard alone over a slow line.</summary>
[Collection(typeof(DemoAppCollection))]
public sealed class GridTests(Chromium chromium, RunningApp app)
{
    private const int Burns = 3, MostKeysAValue = 6;
    private static readonly TimeSpan Between = TimeSpan.FromSeconds(1.0 / 8);
    private static readonly TimeSpan EachWay = TimeSpan.FromMilliseconds(300);

    private static readonly string[] Values = ["3.62", "1,40", ".301", "0.025", "0.012", ".058", "0.30", "0.05", "<.005", "0.008", ".0034", ".0061"];

    [Fact]
    public async Task Sample_TypedAtEightKeysASecondOverASlowLine_LosesNoCharacter()
    {
        await using var line = new Cable(app.Address, EachWay);
        await using var context = await chromium.TabletAsync(app.Address);
        var page = await context.SignInAsync("henning");
        var heat = await page.StartHeatAsync("furnace-2", 1500);
        await page.OpenAsync(new Uri(line.Address, heat).ToString()); // what is typed goes over the slow line, which a cookie does not ask for
        await page.HeardAsync(); // what the page draws once it is there may take the button from under a key
        await page.Locator("[data-testid=samples] button.press").First.PressAsync("Enter");
        await Assertions.Expect(page.Locator("[data-testid=sample-form] [data-cell='0.C']")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("+");
        var columns = await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('[data-cell^=\"0.\"]')].map(cell => cell.dataset.cell.split('.')[1])");

        var keys = 0;
        foreach (var value in Values)
        {
            for (var burn = 0; burn < Burns; burn++)
            {
                foreach (var key in value.Select(sign => sign.ToString()).Append("Enter"))
                {
                    var next = Task.Delay(Between, TestContext.Current.CancellationToken);
                    await page.Keyboard.PressAsync(key);
                    await next;
                    keys++;
                }
            }
        }

        Assert.InRange(keys / (double)(Burns * Values.Length), 1, MostKeysAValue);
        var typed = await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('[data-cell]')].map(cell => cell.value).filter(text => text)");
        Assert.Equal(Enumerable.Repeat(Values, Burns).SelectMany(row => row), typed);

        // The columns that hold something stay when the others go; the last cell leads to the press that saves.
        await Assertions.Expect(page.Locator($"td.spare [data-cell='0.{columns[Values.Length - 1]}']")).ToHaveCountAsync(0);
        foreach (var key in new[] { "+", "Control+End", "Enter", "Enter" }) await page.Keyboard.PressAsync(key);
        var table = page.Locator("[data-testid=burn-table]").First;
        await table.WaitForAsync();
        var heads = await table.Locator("thead th.number").AllInnerTextsAsync();
        for (var burn = 1; burn <= Burns; burn++)
        {
            var shown = heads.Zip(await table.Locator($"[data-burn='{burn}'] td.number").AllInnerTextsAsync()).ToDictionary(cell => cell.First, cell => Number(cell.Second));
            Assert.Equal(columns.Zip(Values.Select(Number)).ToDictionary(cell => cell.First, cell => cell.Second), shown);
        }
    }

    [Fact]
    public async Task Keys_OfTheGrid_MoveTakeBackAndPaste()
    {
        await using var line = new Cable(app.Address, EachWay);
        await using var context = await chromium.DeskAsync(app.Address);
        var page = await context.SignInAsync("henning");
        await page.OpenAsync(new Uri(line.Address, "/parts").ToString());
        var grid = page.Locator("table[data-grid]").First;
        await PickAsync();
        await grid.Locator("[data-cell='0.C']").FocusAsync();

        // The device's own picker, narrowed by what is typed before it; Enter there sends nothing, Escape takes nothing back.
        async Task PickAsync()
        {
            var picker = page.Locator("[data-field=longChoice] select");
            var narrow = page.Locator("[data-field=longChoice] .narrow-choices");
            var shown = page.Locator("[data-field=longChoice] [data-testid=choices-shown]");
            var place = page.Url;
            await page.SetViewportSizeAsync(360, 740);
            await narrow.FocusAsync();
            foreach (var key in new[] { "6", "Enter" }) await page.Keyboard.PressAsync(key);
            await Assertions.Expect(shown).ToHaveTextAsync("16 of 70 in the list");
            await page.Keyboard.PressAsync("Tab");
            await Assertions.Expect(picker).ToBeFocusedAsync();
            foreach (var (key, chosen) in new[] { ("ArrowDown", "6"), ("ArrowDown", "16"), ("End", "69"), ("ArrowUp", "68"), ("Escape", "68"), ("Enter", "68") })
            {
                await page.Keyboard.PressAsync(key);
                Assert.Equal(chosen, await picker.InputValueAsync());
            }

            // The answers to the first of these keys come when the last were pressed long since, and take nothing back.
            await narrow.FocusAsync();
            foreach (var key in new[] { "8", "Enter" }) await page.Keyboard.PressAsync(key);
            await Assertions.Expect(shown).ToHaveTextAsync("1 of 70 in the list");
            Assert.Equal("68", await picker.InputValueAsync());
            Assert.Equal(place, page.Url);
            Assert.True(await page.EvaluateAsync<bool>("""
                () => [...document.querySelectorAll("[data-field=longChoice] :is(input, select, p)")].every((part) => {
                  const { left, right } = part.getBoundingClientRect();
                  return left >= 0 && right <= 360 && part.scrollWidth <= part.clientWidth + 1;
                })
                """));
            await page.SetViewportSizeAsync(1440, 900);
        }

        async Task After(string cell, params string[] keys)
        {
            foreach (var key in keys) await page.Keyboard.PressAsync(key);
            Assert.Equal(cell, await page.EvaluateAsync<string>("() => document.activeElement.dataset.cell"));
        }

        await After("0.Si", "Tab");
        await After("1.Si", "ArrowDown");
        await After("1.C", "ArrowLeft");
        await After("0.C", "Shift+Tab", "ArrowLeft", "ArrowUp", "Home");
        await After("0.P", "End");
        await After("2.P", "Control+End");
        await After("0.C", "Control+Home");
        await After("0.C", "9", "9", "Escape");
        await Assertions.Expect(grid.Locator("[data-cell='0.C']")).ToHaveValueAsync("");
        await After("0.C", "+");
        await Assertions.Expect(grid.Locator("[data-cell='0.Te']")).ToBeVisibleAsync();
        await After("0.C", "+");
        await Assertions.Expect(grid.Locator("[data-cell='0.Te']")).ToBeHiddenAsync();

        var leftOut = page.Locator("[data-grid-left-out]").First;
        await Paste("3.61\t1.40\r\n3,62\t<0.01\r\n");
        var heard = page.Locator("[data-testid=heard]");
        await Assertions.Expect(heard).ToHaveTextAsync("3.61 1.40 3,62 <0.01");
        await Assertions.Expect(leftOut).ToHaveTextAsync("");

        // Esc gives back what stood before the paste, and the server hears of that: typed over, pasted over, taken back and left.
        await After("0.C", "ArrowDown", "ArrowUp", "3", ".", "5", "Enter", "ArrowUp");
        await Assertions.Expect(heard).ToHaveTextAsync("3.5 1.40 3,62 <0.01");
        await Paste("3,55\t1,41");
        await Assertions.Expect(heard).ToHaveTextAsync("3,55 1,41 3,62 <0.01");
        await After("0.Si", "Escape", "Tab");
        await Assertions.Expect(grid.Locator("[data-cell='0.C']")).ToHaveValueAsync("3.5");
        await Assertions.Expect(heard).ToHaveTextAsync("3.5 1,41 3,62 <0.01");

        await After("2.P", "Control+End");
        await Paste("0.02\t0.01\t0.005\r\n0.03\t\t");
        await Assertions.Expect(leftOut).ToContainTextAsync(": 3.");

        // Symbols over the figures name their columns, hidden ones as well; what is no column here is said.
        await After("0.C", "Control+Home");
        await Paste("Si\tC %\tTe\tXx\r\n1.43\t3.58\t0.01\t5\r\n");
        await Assertions.Expect(heard).ToHaveTextAsync("3.58 1.43 0.01 3,62 <0.01 0.02");
        await Assertions.Expect(grid.Locator("[data-cell='0.Te']")).ToBeVisibleAsync();
        await Assertions.Expect(leftOut).ToContainTextAsync(": 1.");
        await Paste("C\tSi");
        await Assertions.Expect(heard).ToHaveTextAsync("3.58 1.43 0.01 3,62 <0.01 0.02");
        await Assertions.Expect(leftOut).ToContainTextAsync(": 2.");

        async Task Paste(string text) => await page.EvaluateAsync("""
            (text) => {
              const clipboardData = new DataTransfer();
              clipboardData.setData('text', text);
              document.activeElement.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
            }
            """, text);
    }

    private static double Number(string text) => double.Parse(text.TrimStart('<').Replace(',', '.'), CultureInfo.InvariantCulture);
}
