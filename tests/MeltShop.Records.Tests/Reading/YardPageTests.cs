using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Reading;

public abstract class YardPageTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Yard_MaterialWithAnalysis_ShowsTheOneInForceInReportOrder()
    {
        var foundry = await Foundry.Found(database);
        await Analyse(foundry, (Element.Mn, 0.9, null, null), (Element.C, 0.2, 0.02, 95));
        await Analyse(foundry, (Element.Mn, 0.8, null, null), (Element.C, 0.15, 0.01, 90));

        var steel = Assert.Single((await Page.Load(new(Text: foundry.Steel.Code), Ct)).Materials);

        Assert.Equal(312.50m, steel.PricePerTonne);
        Assert.Equal(MaterialUses.Charge | MaterialUses.BathAddition, steel.Uses);
        Assert.Null(steel.StockKg); // never counted, which is not zero
        Assert.Equal([new(Element.C, 0.15, 0.01, 90, 75), new(Element.Mn, 0.8, null, null)], steel.Analysis!.Percents);
        Assert.Equal(90, steel.Composition(RecoveryStage.Charge).Recovery(Element.C));
        Assert.Equal(75, steel.Composition(RecoveryStage.Bath).Recovery(Element.C));
        Assert.Equal(0.15, steel.Composition(RecoveryStage.Charge).Analysis[Element.C]);
    }

    [Fact]
    public async Task Yard_FilterByKindAndText_FindsWhateverTheCase()
    {
        var foundry = await Foundry.Found(database);

        Assert.Single((await Page.Load(new(MaterialKind.SteelScrap, foundry.Steel.Code.ToLowerInvariant()), Ct)).Materials);
        Assert.Empty((await Page.Load(new(MaterialKind.PigIron, foundry.Steel.Code), Ct)).Materials);
    }

    [Fact]
    public async Task Bins_OfTheYard_StandAsPeopleCountThem()
    {
        var foundry = await Foundry.Found(database);
        var bay = "Bay " + foundry.Steel.Code;
        await foundry.Write("MoveLot", (db, stamp) => db.LotPlaces.AddRange(new[] { "10", "1", "2" }.Select(number => stamp.Place(foundry.Steel.Id, null, $"{bay} {number}"))));

        Assert.Equal([$"{bay} 1", $"{bay} 2", $"{bay} 10"], (await Page.Bins(Ct)).Where(bin => bin.StartsWith(bay, StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Yard_SearchedForABin_FindsWhatLiesThereNowAndNotWhatLayThere()
    {
        var foundry = await Foundry.Found(database);
        var bin = "Bay " + foundry.Steel.Code;
        await foundry.Write("MoveLot", (db, stamp) => db.LotPlaces.AddRange(stamp.Place(foundry.Steel.Id, null, "elsewhere"), stamp.Place(foundry.Steel.Id, null, bin)));

        var steel = Assert.Single((await Page.Load(new(Text: bin.ToUpperInvariant()), Ct)).Materials);
        Assert.Equal((foundry.Steel.Code, bin), (steel.Code, steel.PileBin));
        Assert.Contains(bin, await Page.Bins(Ct));

        await foundry.Write("MoveLot", (db, stamp) => db.LotPlaces.Add(stamp.Place(foundry.Steel.Id, null, null)));
        Assert.Empty((await Page.Load(new(Text: bin), Ct)).Materials);
    }

    [Fact]
    public async Task Yard_ManyMaterials_CostsAsManyStatementsAsOne()
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("AddMaterial", (db, _) => db.Materials.AddRange(Enumerable.Range(0, YardPage.Most + 1).Select(n => new Material
        {
            Code = $"{foundry.Steel.Code}-{n:000}", Name = "Steel", Kind = MaterialKind.Cover, Uses = MaterialUses.None, PricePerTonne = 0, MetallicYieldPercent = 100,
        })));

        YardView few = null!, many = null!;
        var one = await Commands.Sent(async () => few = await Page.Load(new(Text: foundry.Steel.Code + "-001"), Ct));
        var all = await Commands.Sent(async () => many = await Page.Load(new(MaterialKind.Cover), Ct));

        Assert.Equal((1, false), (few.Materials.Count, few.More));
        Assert.Equal((YardPage.Most, true), (many.Materials.Count, many.More));
        Assert.Equal(YardPage.Most + 1, (await Page.All(Ct)).Count(m => m.Code.StartsWith(foundry.Steel.Code + "-", StringComparison.Ordinal))); // whoever chooses has them all
        Assert.Equal((6, 5), (one, all)); // what is searched for may be a bin
    }

    private YardPage Page => new(database.Contexts);

    private static Task Analyse(Foundry foundry, params (Element, double, double?, double?)[] percents) => foundry.Write("CorrectAnalysis", (db, stamp) =>
    {
        var analysis = stamp.Analysis(foundry.Steel.Id, percents);
        db.MaterialAnalyses.Add(analysis);
        db.SaveChanges();
        db.Materials.Single(m => m.Id == foundry.Steel.Id).AnalysisId = analysis.Id;
    });
}

public sealed class YardPageTestsOnSqlite(SqliteDatabase database) : YardPageTests(database), IClassFixture<SqliteDatabase>;

public sealed class YardPageTestsOnPostgres(PostgresDatabase database) : YardPageTests(database), IClassFixture<PostgresDatabase>;
