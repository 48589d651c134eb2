using MeltShop.Operations.Grades;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>One furnace, one grade and a yard from which it can be made; figures of the test's own, no source.</summary>
public abstract class MeltingShop : ShopTest
{
    protected long FurnaceId { get; private set; }

    protected long GradeId { get; private set; }

    protected Dictionary<string, long> MaterialIds { get; } = [];

    protected override async Task Prepare()
    {
        (FurnaceId, GradeId, var materials) = await Once("melting shop", Lay);
        foreach (var (code, id) in materials) MaterialIds[code] = id;
    }

    private async Task<(long Furnace, long Grade, IReadOnlyDictionary<string, long> Materials)> Lay()
    {
        await The<SetUpSite>().Run(Founder, new(Guid.NewGuid(), Now, "T", "Test foundry", "Europe/Berlin", "EUR"));
        var furnace = (await The<AddFurnace>().Run(Founder, new(Guid.NewGuid(), Now, "F1", "Furnace 1", 3000, 1800, 1560))).Value;
        await Add("pig", MaterialKind.PigIron, 420, 98, new("C", 4.2), new("Si", 1.0), new("Mn", 0.1), new("S", 0.01));
        await Add("steel", MaterialKind.SteelScrap, 300, 97, new("C", 0.1), new("Si", 0.2), new("Mn", 0.6, 0.1), new("S", 0.02));
        await Add("carbon", MaterialKind.Carburiser, 600, 100, new MaterialPercentInput("C", 98, null, 90));
        await Add("fesi", MaterialKind.FerroAlloy, 1600, 100, new MaterialPercentInput("Si", 75, null, 92));
        await Add("copper", MaterialKind.FerroAlloy, 9000, 100, new MaterialPercentInput("Cu", 99));
        var grade = (await The<AddGrade>().Run(Founder, new(
            Guid.NewGuid(), Now, "EN-GJS-500-7", IronFamily.Ductile, "Test figures",
            [
                new(WindowStage.Furnace, "C", 3.5, 3.65, 3.8, 0.02), new(WindowStage.Furnace, "Si", 1.3, 1.5, 1.8, 0.02),
                new(WindowStage.Furnace, "Mn", null, 0.3, 0.5, 0.01), new(WindowStage.Furnace, "Cu", null, null, 0.1),
                new(WindowStage.Poured, "C", 3.4, 3.6, 3.8),
            ],
            new(0.04, 0.03, 0.006, null, null, 0.4, 8)))).Value;
        return (furnace, grade, new Dictionary<string, long>(MaterialIds));
    }

    /// <summary>Takes a table away, as a failing disk would.</summary>
    protected Task Break(string table) => Rename(table, "Gone");

    /// <summary>Gives the table back.</summary>
    protected Task Mend(string table) => Rename("Gone", table);

    /// <summary>Leaves a material without an analysis, as an older file of records may have it.</summary>
    protected async Task Forget(string code)
    {
        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        await db.Materials.Where(m => m.Code == code).ExecuteUpdateAsync(set => set.SetProperty(m => m.AnalysisId, (long?)null), Cancellation);
    }

    private async Task Rename(string table, string name)
    {
        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
#pragma warning disable EF1002 // the name of a table cannot be a parameter; it comes from the tests alone
        await db.Database.ExecuteSqlRawAsync($"ALTER TABLE {table} RENAME TO {name}", Cancellation);
#pragma warning restore EF1002
    }

    protected async Task Add(string code, MaterialKind kind, decimal price, double? yield, params MaterialPercentInput[] percents)
    {
        var id = (await The<AddMaterial>().Run(Founder, new(
            Guid.NewGuid(), Now, code, "Test " + code, kind, MaterialUses.Charge | MaterialUses.BathAddition, price, yield, percents, "Test figures", "memory",
            Cautions: code == "steel" ? "wet" : ""))).Value;
        await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now, id, StockKind.Counted, 9000));
        MaterialIds[code] = id;
    }
}
