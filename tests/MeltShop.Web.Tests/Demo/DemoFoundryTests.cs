using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Operations;
using MeltShop.Operations.Charging;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Writing;
using MeltShop.Web.Demo;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Demo;

public sealed class DemoFoundryTests : IAsyncLifetime
{
    private readonly string folder = Directory.CreateTempSubdirectory("meltshop-demo-").FullName;
    private readonly BreakingClock clock = new();
    private ServiceProvider services = null!;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        var options = new RecordsOptions { Provider = RecordsProvider.Sqlite, ConnectionString = $"Data Source={Path.Combine(folder, "demo.db")}" };
        await RecordsDatabase.MigrateAsync(options, Soon);
        services = new ServiceCollection().AddSingleton<TimeProvider>(clock).AddMeltShopRecords(options).AddMeltShopOperations()
            .AddLogging().AddLocalization().AddSingleton<DemoFoundry>().BuildServiceProvider();
    }

    public async ValueTask DisposeAsync()
    {
        await services.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Seed_EmptyDatabase_LeavesAFinishedHeatAHeldLadleAndAHeel()
    {
        await services.GetRequiredService<DemoFoundry>().SeedAsync(Soon);

        await using var db = Open();
        var heat = await db.Heats.SingleAsync(Soon);
        Assert.Equal(HeatState.Closed, heat.State);
        Assert.Equal(
            [TreatedLadleState.Released, TreatedLadleState.Released, TreatedLadleState.Released, TreatedLadleState.Held],
            await db.TreatedLadles.OrderBy(l => l.Ordinal).Select(l => l.State).ToListAsync(Soon));
        Assert.True(await db.Materials.CountAsync(Soon) >= 25);
        Assert.Equal(["4-3"], await db.PouredMoulds.Where(m => m.LateFor != null).Select(m => m.Label).ToListAsync(Soon));
        Assert.Equal(18, await db.PouredMoulds.CountAsync(Soon));
        Assert.Equal($"{heat.Number}/3", (await db.Certificates.SingleAsync(Soon)).Number);
        Assert.Equal("M-1121", (await db.PocketCards.OrderBy(c => c.Id).LastAsync(Soon)).AlloyLot);

        var instrument = (await services.GetRequiredService<InstrumentPage>().Load(await db.Instruments.Select(i => i.Id).SingleAsync(Soon), Soon))!;
        Assert.Equal(30, instrument.Samples.Count);
        Assert.Equal(["Mn"], Assert.Single(instrument.State.Verdicts, v => !v.IsGood).Outside.Select(e => e.Symbol));
        Assert.All(instrument.State.Verdicts, v => Assert.Empty(v.Moved));
        Assert.Empty(instrument.Doubted);

        var view = await services.GetRequiredService<ChargePage>().Load(Soon);
        var furnace = view.Furnaces.Single(f => f.Code == "furnace-1");
        Assert.InRange(furnace.LiquidKg, 500, 700);
        Assert.True(furnace.Heel!.Analysis.Elements.Count > 10);
        Assert.True((await services.GetRequiredService<TrailCheck>().Run(Soon)).Holds);

        // Planned for the mould, under the cover steel of the recipe that the ladles of the heat lay under too.
        var ductile = view.Grades.Where(g => g.Family is IronFamily.Ductile).ToList();
        Assert.Equal(5, ductile.Count);
        Assert.All(ductile, grade =>
        {
            Assert.Equal(("cover-punchings", 1), (grade.Recipe!.CoverCode, grade.Recipe.CoverRatePercent));
            var asked = ChargeQuestion.Build(view, new(furnace.Id, grade.Id, 5000, HeelKg: 0) { Target = ChargeTarget.Poured, LadleId = view.Ladles[0].Id });
            Assert.Empty(asked.Findings);
            Assert.Equal(PlanStatus.Optimal, ChargeOptimiser.Plan(asked.Problem!, Soon).Status);
        });
    }

    [Fact]
    public async Task Seed_BrokenOffAndStartedAgain_MakesNothingTwice()
    {
        using var off = new CancellationTokenSource();
        clock.AfterLooks(170, off.Cancel);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => services.GetRequiredService<DemoFoundry>().SeedAsync(off.Token));
        await using (var db = Open()) Assert.InRange(await db.Materials.CountAsync(Soon), 1, DemoCatalogue.Load().Materials.Count - 1);

        await services.GetRequiredService<DemoFoundry>().SeedAsync(Soon);
        var kept = await Kept();
        await services.GetRequiredService<DemoFoundry>().SeedAsync(Soon);

        Assert.Equal(kept, await Kept());
        await using var after = Open();
        Assert.Equal(DemoCatalogue.Load().Materials.Count, await after.Materials.CountAsync(Soon));
        Assert.Equal(1, await after.Heats.CountAsync(Soon));
    }

    [Fact]
    public async Task Seed_DatabaseOfARealShop_IsLeftAlone()
    {
        await services.GetRequiredService<MeltShop.Operations.Sites.SetUpSite>().Run(
            new Acting(0, "Set-up", "test", ["administrator"]),
            new(Guid.NewGuid(), clock.GetUtcNow(), "RS", "A real shop", "Europe/Berlin", "EUR"), Soon);
        var kept = await Kept();

        await services.GetRequiredService<DemoFoundry>().SeedAsync(Soon);

        Assert.Equal(kept, await Kept());
    }

    private RecordsContext Open() => services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContext();

    private async Task<int> Kept()
    {
        await using var db = Open();
        return await db.TrailRows.CountAsync(Soon);
    }

    /// <summary>A clock that does something at a certain look: each operation looks at it.</summary>
    private sealed class BreakingClock : TimeProvider
    {
        private int looks;
        private int at = -1;
        private Action act = () => { };

        public void AfterLooks(int count, Action what) => (at, act) = (looks + count, what);

        public override DateTimeOffset GetUtcNow()
        {
            if (Interlocked.Increment(ref looks) == at) act();
            return base.GetUtcNow();
        }
    }
}
