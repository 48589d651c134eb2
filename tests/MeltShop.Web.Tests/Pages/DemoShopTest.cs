using MeltShop.Web.Demo;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Pages;

/// <summary>Pages over the demo foundry, with its finished heat, its released ladles and the one that is held. It is seeded once; each test has a copy of its own.</summary>
public abstract class DemoShopTest : ShopTest
{
    protected const string DemoHeatNumber = "OTF-2026-0001";

    private static readonly SemaphoreSlim Turn = new(1, 1);
    private static byte[]? demo;

    protected override async Task Prepare()
    {
        await Turn.WaitAsync(Cancellation);
        try
        {
            if (demo is null)
            {
                await new DemoFoundry(Services, The<Microsoft.EntityFrameworkCore.IDbContextFactory<Records.RecordsContext>>(), The<TimeProvider>()).SeedAsync(Cancellation);
                demo = await File.ReadAllBytesAsync(DatabaseFile, Cancellation);
                return;
            }
        }
        finally
        {
            Turn.Release();
        }

        await File.WriteAllBytesAsync(DatabaseFile, demo, Cancellation);
    }
}
