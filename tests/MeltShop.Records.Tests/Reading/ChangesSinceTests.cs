using MeltShop.Records.Reading.Changes;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Reading;

public abstract class ChangesSinceTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Row_ChangedThriceSinceItWasSeen_TellsEachChangeInItsOrderAndNothingBefore()
    {
        var foundry = await Foundry.Found(database);
        await Change(foundry, m => m.Name = "before it was seen");
        await using var db = database.Open();
        var seen = SeenRow.Of(db, await db.Materials.SingleAsync(m => m.Id == foundry.Steel.Id, Ct), await Version(foundry));
        await Change(foundry, m => m.PricePerTonne = -2.5m);
        await foundry.Write("Other", (own, _) => own.Grades.Add(new() { Code = $"g{Guid.NewGuid():N}", Family = Grades.IronFamily.Grey, Source = "" }));
        await Change(foundry, m => (m.MetallicYieldPercent, m.IsActive) = (96.25, false));
        await Change(foundry, m => (m.PieceKg, m.Uses) = (12, MaterialUses.Charge | MaterialUses.Treatment));

        var made = await new ChangesSince(database.Contexts).Load(seen, Ct);

        Assert.Equal(["Change", "Change", "Change"], made.Select(m => m.Operation));
        Assert.All(made, m => Assert.Equal(foundry.Person.DisplayName, m.Person));
        var values = made.SelectMany(m => m.Values).ToDictionary(v => v.Column, v => (v.Before, v.After));
        Assert.Equal(["IsActive", "MetallicYieldPercent", "PieceKg", "PricePerTonne", "Uses"], values.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(-2.5m, values["PricePerTonne"].After);
        Assert.Equal((97d, 96.25), values["MetallicYieldPercent"]);
        Assert.Equal((true, false), values["IsActive"]);
        Assert.Equal((null, 12d), values["PieceKg"]);
        Assert.Equal(MaterialUses.Charge | MaterialUses.Treatment, values["Uses"].After);
    }

    [Fact]
    public async Task Facts_ThatBelongToTheRow_AreTold()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat(Heats.HeatState.Charging);
        await using var db = database.Open();
        var seen = SeenRow.Of(db, heat, await db.Heats.Where(h => h.Id == heat.Id).Select(h => h.Version).SingleAsync(Ct));
        await foundry.Write("WeighIn", (own, stamp) =>
        {
            own.Weighings.Add(stamp.Weighing(heat.Id, foundry.Steel.Id, 250.5));
            own.Heats.Single(h => h.Id == heat.Id).State = Heats.HeatState.Bath;
        });

        var made = Assert.Single(await new ChangesSince(database.Contexts).Load(seen, Ct));

        Assert.Contains(made.Values, v => (v.Table, v.Column, v.After) is ("Weighings", "Kg", 250.5));
        Assert.Contains(made.Values, v => v.Column == "MaterialId" && Equals(v.After, foundry.Steel.Code));
        Assert.Contains(made.Values, v => v is { Table: "Heats", Column: "State", Before: Heats.HeatState.Charging, After: Heats.HeatState.Bath });
        Assert.DoesNotContain(made.Values, v => v.Column is "HeatId" or "EntryKey" or "PersonId" or "Version");
    }

    [Fact]
    public async Task Version_ThatTheTrailDoesNotKnow_TellsNothing()
    {
        var foundry = await Foundry.Found(database);
        await Change(foundry, m => m.PricePerTonne = 1);
        await using var db = database.Open();

        Assert.Empty(await new ChangesSince(database.Contexts).Load(SeenRow.Of(db, foundry.Steel, Guid.NewGuid()), Ct));
    }

    private static Task Change(Foundry foundry, Action<Material> change) =>
        foundry.Write("Change", (db, _) => change(db.Materials.Single(m => m.Id == foundry.Steel.Id)));

    private async Task<Guid> Version(Foundry foundry)
    {
        await using var db = database.Open();
        return await db.Materials.Where(m => m.Id == foundry.Steel.Id).Select(m => m.Version).SingleAsync(Ct);
    }
}

public sealed class ChangesSinceTestsOnSqlite(SqliteDatabase database) : ChangesSinceTests(database), IClassFixture<SqliteDatabase>;

public sealed class ChangesSinceTestsOnPostgres(PostgresDatabase database) : ChangesSinceTests(database), IClassFixture<PostgresDatabase>;
