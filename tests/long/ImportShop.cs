using MeltShop.Operations;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Long;

/// <summary>A shop with one heat and one spectrometer, on either database; all figures are invented.</summary>
internal sealed class ImportShop : IAsyncDisposable
{
    public const string HeatNumber = "TB-2026-0001";

    private readonly ServiceProvider services;

    private ImportShop(RecordsOptions options) =>
        services = new ServiceCollection().AddSingleton(TimeProvider.System).AddMeltShopRecords(options).AddMeltShopOperations().BuildServiceProvider();

    public static Acting Person { get; } = new(1, "The metallurgist", "long suite", [Role.Metallurgist]);

    public long InstrumentId { get; private set; }

    public TService Get<TService>()
        where TService : notnull => services.GetRequiredService<TService>();

    public Task<RecordsContext> Db() => Get<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();

    public static async Task<ImportShop> Open(RecordsOptions options)
    {
        await RecordsDatabase.MigrateAsync(options);
        var shop = new ImportShop(options);
        await using (var db = await shop.Db())
        {
            db.Users.Add(new Person { Id = Person.PersonId, UserName = "metallurgist", DisplayName = Person.PersonName });
            await db.SaveChangesAsync();
        }

        await shop.Get<Recorder>().Record<int>(new(Guid.NewGuid(), "Found", Person.PersonId, Person.PersonName, Person.Station, TimeProvider.System.GetUtcNow(), new { }), shop.Found);
        return shop;
    }

    public ValueTask DisposeAsync() => services.DisposeAsync();

    private async Task<Written<int>> Found(RecordsContext db, Stamp stamp, CancellationToken ct)
    {
        var (site, furnace) = (new Site { Code = "TB", Name = "Talbrück", TimeZone = "Europe/Berlin", Currency = "EUR" }, new Furnace { Code = "F1", Name = "Furnace", CapacityKg = 6000, PowerKw = 3500 });
        var (grade, spark) = (new Grade { Code = "G1", Family = IronFamily.Ductile, Source = "invented" }, new Instrument { Code = "spark", Name = "Spark", Kind = InstrumentKind.Spark });
        db.AddRange(site, furnace, grade, spark);
        await db.SaveChangesAsync(ct);
        var plan = new Plan
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
            FurnaceId = furnace.Id, GradeId = grade.Id, MeltKg = 5000, Problem = "{}", Answer = "{}", Versions = "{}", TotalCost = 1,
        };
        db.Add(plan);
        await db.SaveChangesAsync(ct);
        db.Add(new Heat
        {
            Number = HeatNumber, SiteId = site.Id, FurnaceId = furnace.Id, GradeId = grade.Id, PlanId = plan.Id, State = HeatState.Bath,
            StartedAt = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero), HeelKg = 0,
        });
        db.Add(new HeatCounter { SiteId = site.Id, Year = 2026, Last = 1 });
        InstrumentId = spark.Id;
        return Written<int>.Of(0);
    }
}
