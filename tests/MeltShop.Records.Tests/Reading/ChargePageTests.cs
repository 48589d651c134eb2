using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Tests.Databases;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Reading;

public abstract class ChargePageTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Charge_FurnaceWithHeel_ShowsTheLastHeelAndItsHeat()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat();
        await foundry.Write("CloseHeat", (db, stamp) => db.Heels.Add(stamp.Heel(foundry.Furnace.Id, heat, 1500, (Element.C, 3.5))));
        await foundry.Write("CloseHeat", (db, stamp) => db.Heels.Add(stamp.Heel(foundry.Furnace.Id, heat, 900, (Element.Si, 1.9), (Element.C, 3.6))));

        var furnace = Assert.Single((await Page.Load(Ct)).Furnaces, f => f.Id == foundry.Furnace.Id);

        Assert.Equal((900, heat.Number), (furnace.Heel!.Kg, furnace.Heel.FromHeatNumber));
        Assert.Equal(Analysis.Of((Element.C, 3.6), (Element.Si, 1.9)), furnace.Heel.Analysis);
        Assert.Null(furnace.HeatId); // the heat is closed
    }

    [Fact]
    public async Task Charge_FurnaceLedger_IsTheSumThatIsKeptBesideIt()
    {
        var foundry = await Foundry.Found(database);
        await using (var db = database.Open()) await db.Furnaces.Where(f => f.Id == foundry.Furnace.Id).ExecuteUpdateAsync(f => f.SetProperty(x => x.LiquidKg, 3800), Ct);

        Assert.Equal(3800, Assert.Single((await Page.Load(Ct)).Furnaces, f => f.Id == foundry.Furnace.Id).LiquidKg);
    }

    [Fact]
    public async Task Charge_HeatInTheFurnace_IsNamed()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat(HeatState.Bath);

        Assert.Equal((heat.Id, heat.Number), Assert.Single((await Page.Load(Ct)).Furnaces.Where(f => f.Id == foundry.Furnace.Id).Select(f => (f.HeatId!.Value, f.HeatNumber))));
    }

    [Fact]
    public async Task Grade_BehindMoreThanAPageLists_CanBeChosenAndItsBathCorrected()
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("AddGrade", (db, _) => db.Grades.AddRange(Enumerable.Range(0, GradesPage.Most + 1).Select(n => new Grade
        {
            Code = $"0-{foundry.Grade.Code}-{n:000}", Family = IronFamily.Grey, Source = "invented for a test",
        })));
        var heat = await foundry.Heat(HeatState.Bath);

        var listed = await new GradesPage(database.Contexts).Load(Ct);
        Assert.Equal((GradesPage.Most, true), (listed.Grades.Count, listed.More));
        Assert.Contains(foundry.Grade.Id, (await Page.Load(Ct)).Grades.Select(g => g.Id));
        Assert.Equal(foundry.Grade.Id, (await new CorrectionPage(database.Contexts, TimeProvider.System).Load(heat.Id, Ct))!.Grade.Id);
    }

    [Fact]
    public async Task Charge_StoredPlan_ComesBackAsItWas()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat();

        var plan = await Page.Plan(heat.PlanId, Ct);

        Assert.Equal((1234.56m, "Ida Anders", heat.Number), (plan!.TotalCost, plan.Origin.Person, Assert.Single(plan.Heats).Number));
        Assert.Null(await Page.Plan(-1, Ct));
    }

    [Fact]
    public async Task Grades_Windows_ComeByStageThenInReportOrderThenTheRest()
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("AddWindow", (db, _) => db.GradeWindows.AddRange(
            Window(foundry, WindowStage.Poured, "C"), Window(foundry, WindowStage.Furnace, "CE"), Window(foundry, WindowStage.Furnace, "Si"),
            Window(foundry, WindowStage.Furnace, "C")));

        await using (var db = database.Open()) // before those that another test adds by the hundred
            await db.Grades.Where(g => g.Id == foundry.Grade.Id).ExecuteUpdateAsync(g => g.SetProperty(x => x.Code, x => "!0-0" + x.Code), Ct);
        var grade = await new GradesPage(database.Contexts).Grade(foundry.Grade.Id, Ct);

        Assert.Equal(
            [(WindowStage.Furnace, "C"), (WindowStage.Furnace, "Si"), (WindowStage.Furnace, "CE"), (WindowStage.Poured, "C")],
            grade!.Windows.Select(w => (w.Stage, w.Quantity)));
        Assert.Contains(await new GradesPage(database.Contexts).All(Ct), g => g.Id == grade.Id && g.Windows.Count == 4);
    }

    private ChargePage Page => new(database.Contexts);

    private static GradeWindow Window(Foundry foundry, WindowStage stage, string quantity) =>
        new() { GradeId = foundry.Grade.Id, Stage = stage, Quantity = quantity, Least = 1, Most = 2, Margin = 0.02 };
}

public sealed class ChargePageTestsOnSqlite(SqliteDatabase database) : ChargePageTests(database), IClassFixture<SqliteDatabase>;

public sealed class ChargePageTestsOnPostgres(PostgresDatabase database) : ChargePageTests(database), IClassFixture<PostgresDatabase>;
