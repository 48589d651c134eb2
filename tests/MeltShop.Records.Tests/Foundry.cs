using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;

namespace MeltShop.Records.Tests;

/// <summary>A small invented foundry in the records, enough to hang facts on.</summary>
public sealed record Foundry(Database Database, Person Person, Site Site, Furnace Furnace, Ladle Ladle, Grade Grade, Material Steel)
{
    private static int made;

    /// <summary>Makes one beside those that other tests of the class made: every code is its own.</summary>
    public static async Task<Foundry> Found(Database database)
    {
        var n = Interlocked.Increment(ref made);
        await using var db = database.Open();
        var person = new Person { DisplayName = "Ida Anders", UserName = $"ida{n}", NormalizedUserName = $"IDA{n}" };
        db.Users.Add(person);
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);

        var site = new Site { Code = $"T{n}", Name = "Talbrück", TimeZone = "Europe/Berlin", Currency = "EUR" };
        var furnace = new Furnace { Code = $"F{n}", Name = "Furnace", CapacityKg = 6000, PowerKw = 3500 };
        var ladle = new Ladle
        {
            Code = $"L{n}", Name = "Ladle", Process = "sandwich", FillLimitKg = 1200, PocketKg = 40, MgRecoveryPercent = 50,
            MgFadePercentPerMinute = 0.001, HeatLossKPerMinute = 4, FiguresSource = "invented for a test",
        };
        var grade = new Grade { Code = $"G{n}", Family = IronFamily.Ductile, Source = "invented for a test" };
        var steel = new Material
        {
            Code = $"M{n}", Name = "Steel scrap", Kind = MaterialKind.SteelScrap, Uses = MaterialUses.Charge | MaterialUses.BathAddition,
            PricePerTonne = 312.50m, MetallicYieldPercent = 97,
        };
        var foundry = new Foundry(database, person, site, furnace, ladle, grade, steel);
        await foundry.Write("Found", (context, _) => context.AddRange(site, furnace, ladle, grade, steel));
        return foundry;
    }

    public EntryStamp Entry(string operation, Guid? key = null) =>
        new(key ?? Guid.NewGuid(), operation, Person.Id, Person.DisplayName, "Lab tablet", Database.Clock.GetUtcNow(), new { operation });

    /// <summary>Records what the action adds or changes; the test fails where it is refused.</summary>
    public async Task Write(string operation, Action<RecordsContext, Stamp> change)
    {
        var recorded = await Database.Recorder.Record(Entry(operation), (db, stamp, _) =>
        {
            change(db, stamp);
            return Task.FromResult(Written<int>.Of(0));
        }, TestContext.Current.CancellationToken);
        Assert.Empty(recorded.Findings);
    }

    public Plan PlanOf(Stamp stamp) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        FurnaceId = Furnace.Id, GradeId = Grade.Id, MeltKg = 5000, Problem = "{}", Answer = "{}", Versions = "{}", TotalCost = 1234.56m,
    };

    /// <summary>A heat that was started and closed, so that the furnace is free again.</summary>
    public async Task<Heat> Heat(HeatState state = HeatState.Closed, DateTimeOffset? startedAt = null)
    {
        Heat heat = null!;
        var recorded = await Database.Recorder.Record(Entry("StartHeat"), async (db, stamp, ct) =>
        {
            var plan = PlanOf(stamp);
            db.Plans.Add(plan);
            await db.SaveChangesAsync(ct);
            heat = new Heat
            {
                Number = await HeatNumbers.Next(db, Site, stamp.ObservedAt, ct), SiteId = Site.Id, FurnaceId = Furnace.Id, GradeId = Grade.Id,
                PlanId = plan.Id, State = state, StartedAt = startedAt ?? stamp.ObservedAt, HeelKg = 0,
            };
            db.Heats.Add(heat);
            return Written<int>.Of(0);
        }, TestContext.Current.CancellationToken);
        Assert.Empty(recorded.Findings);
        return heat;
    }
}
