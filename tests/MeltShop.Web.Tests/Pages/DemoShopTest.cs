using MeltShop.Web.Demo;

namespace MeltShop.Web.Tests.Pages;

/// <summary>Pages over the demo foundry, with its finished heat, its released ladles and the one that is held. It is seeded once; each test has a copy of its own.</summary>
public abstract class DemoShopTest : ShopTest
{
    protected const string DemoHeatNumber = "OTF-2026-0001";

    protected override Task Prepare() => Once("demo", async () =>
    {
        await new DemoFoundry(Services, The<Microsoft.EntityFrameworkCore.IDbContextFactory<Records.RecordsContext>>(), The<TimeProvider>()).SeedAsync(Cancellation);
        return DemoHeatNumber;
    });
}
