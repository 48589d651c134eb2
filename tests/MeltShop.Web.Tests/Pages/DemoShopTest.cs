using MeltShop.Web.Demo;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Pages;

/// <summary>Pages over the demo foundry, with its finished heat, its released ladles and the one that is held.</summary>
public abstract class DemoShopTest : ShopTest
{
    protected const string DemoHeatNumber = "OTF-2026-0001";

    protected override Task Prepare() =>
        new DemoFoundry(Services, The<Microsoft.EntityFrameworkCore.IDbContextFactory<Records.RecordsContext>>(), The<TimeProvider>()).SeedAsync(Cancellation);
}
