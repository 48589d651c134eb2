using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Running;

/// <summary>One browser for the whole run; each test opens contexts of its own.</summary>
public sealed class Chromium : IAsyncLifetime
{
    /// <summary>Milliseconds: a busy machine draws later, and is not at fault.</summary>
    private const float Patience = 180_000;

    private IPlaywright? playwright;
    private IBrowser? browser;

    public async ValueTask InitializeAsync()
    {
        playwright = await Playwright.CreateAsync();
        Assertions.SetDefaultExpectTimeout(Patience);
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Environment.GetEnvironmentVariable("MELTSHOP_TEST_CHROMIUM") ?? "/usr/bin/chromium",
            Timeout = Patience,
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync",
            ],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
        playwright?.Dispose();
    }

    /// <summary>A tablet held in a glove: 1180 × 820, touch.</summary>
    public Task<IBrowserContext> TabletAsync(Uri address, string zone = "Europe/Berlin") => ContextAsync(address, 1180, 820, touch: true, zone);

    /// <summary>A desk: 1440 × 900, mouse and keyboard.</summary>
    public Task<IBrowserContext> DeskAsync(Uri address) => ContextAsync(address, 1440, 900, touch: false);

    /// <summary>A phone in one hand: 390 × 844, touch.</summary>
    public Task<IBrowserContext> PhoneAsync(Uri address) => ContextAsync(address, 390, 844, touch: true);

    private async Task<IBrowserContext> ContextAsync(Uri address, int width, int height, bool touch, string zone = "Europe/Berlin")
    {
        var context = await browser!.NewContextAsync(new()
        {
            BaseURL = address.ToString(),
            ViewportSize = new() { Width = width, Height = height },
            HasTouch = touch,
            Locale = "en-GB",
            TimezoneId = zone,
        });
        context.SetDefaultTimeout(Patience);
        SignedIn.At(address, context);
        await LateCircuit.OfAsync(context);
        return context;
    }
}
