using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Yard;

public sealed class AddMaterialTests(OneShop one) : IClassFixture<OneShop>
{
    private readonly Shop shop = one.Shop;

    public static TheoryData<string, string, string> Refused => new()
    {
        { "negative", "percents.Si", "percent.negative" },
        { "over100", "percents.Si", "percent.over100" },
        { "sum", "percents", "analysis.sum" },
        { "unknown", "percents.Xx", "element.unknown" },
        { "twice", "percents.Si", "element.twice" },
        { "iron", "percents.Fe", "analysis.iron" },
        { "notANumber", "percents.Si", "number.notANumber" },
        { "spread", "percents.Si.spread", "number.negative" },
        { "recovery", "percents.Si.recoveryPercent", "percent.over100" },
        { "bathRecovery", "percents.Si.bathRecoveryPercent", "percent.negative" },
        { "yield", "metallicYieldPercent", "yield.zero" },
        { "price", "pricePerTonne", "money.decimals" },
        { "piece", "pieceKg", "mass.negative" },
        { "source", "source", "text.missing" },
        { "sourceKind", "sourceKind", "choice.unknown" },
        { "code", "code", "code.taken" },
        { "name", "name", "text.missing" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public Task AddMaterial_WrongInput_IsRefusedAtItsField(string what, string path, string code) =>
        shop.Refuses(shop.Get<AddMaterial>(), shop.Metallurgist, Wrong(what), path, code);

    [Fact]
    public async Task AddMaterial_SeveralFaults_NamesThemAll()
    {
        var outcome = await Shop.Do(shop.Get<AddMaterial>(), shop.Metallurgist, Wrong("spread") with { Name = "", Source = "" });

        Assert.Equal(["name", "percents.Si.spread", "source"], outcome.Findings.Select(f => f.Path).Order());
    }

    [Fact]
    public async Task CorrectAnalysis_Better_SupersedesAndKeepsTheOld()
    {
        await using var db = shop.Db();
        var before = await db.Materials.AsNoTracking().SingleAsync(m => m.Id == shop.CarburiserId, TestContext.Current.CancellationToken);

        var outcome = await Shop.Do(shop.Get<CorrectAnalysis>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, before.Id, before.Version, [new("C", 97.5)], "certificate 12", "certificate", "new delivery"));

        var after = await db.Materials.AsNoTracking().SingleAsync(m => m.Id == shop.CarburiserId, TestContext.Current.CancellationToken);
        Assert.Equal(outcome.Value, after.Version);
        var analysis = await db.MaterialAnalyses.Include(a => a.Percents).SingleAsync(a => a.Id == after.AnalysisId, TestContext.Current.CancellationToken);
        Assert.Equal((before.AnalysisId, "new delivery", 97.5), (analysis.SupersedesId, analysis.Reason, Assert.Single(analysis.Percents).Percent));
    }

    [Fact]
    public async Task BookStock_CountedAndReceived_IsTheSumOfTheLedger()
    {
        var id = await Shop.Do(shop.Get<AddMaterial>(), shop.Metallurgist, Wrong("fine"));
        Task<Outcome<double>> Book(StockKind kind, double kg) => Shop.Do(shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id.Value, kind, kg));

        Assert.Equal(800, (await Book(StockKind.Received, 800)).Value);
        Assert.Equal(750, (await Book(StockKind.Counted, 750)).Value);
        Assert.Equal(1000, (await Book(StockKind.Received, 250)).Value);

        await using var db = shop.Db();
        Assert.Equal(1000, (await db.Materials.SingleAsync(m => m.Id == id.Value, TestContext.Current.CancellationToken)).StockKg);
        await shop.Refuses(shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id.Value, StockKind.Charged, 1), "kind", "choice.unknown");
        await shop.Refuses(shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id.Value, StockKind.Counted, -1), "kg", "mass.negative");
    }

    private AddMaterial.Command Wrong(string what)
    {
        var command = new AddMaterial.Command(
            Guid.NewGuid(), shop.Now, $"new-{Guid.NewGuid()}", "New", MaterialKind.FerroAlloy, MaterialUses.Charge, 100, 100,
            [new("C", 1), new("Si", 50)], "invented for a test", "memory");
        MaterialPercentInput[] Second(MaterialPercentInput second) => [new("C", 1), second];
        return what switch
        {
            "negative" => command with { Percents = Second(new("Si", -0.1)) },
            "over100" => command with { Percents = Second(new("Si", 100.1)) },
            "sum" => command with { Percents = Second(new("Si", 99.5)) },
            "unknown" => command with { Percents = Second(new("Xx", 1)) },
            "twice" => command with { Percents = [new("Si", 1), new("Si", 2)] },
            "iron" => command with { Percents = Second(new("Fe", 90)) },
            "notANumber" => command with { Percents = Second(new("Si", double.NaN)) },
            "spread" => command with { Percents = Second(new("Si", 50, -0.1)) },
            "recovery" => command with { Percents = Second(new("Si", 50, null, 101)) },
            "bathRecovery" => command with { Percents = Second(new("Si", 50, null, 90, -1)) },
            "yield" => command with { MetallicYieldPercent = 0 },
            "price" => command with { PricePerTonne = 1.005m },
            "piece" => command with { PieceKg = -1 },
            "source" => command with { Source = " " },
            "sourceKind" => command with { SourceKind = "hearsay" },
            "code" => command with { Code = "steel" },
            "name" => command with { Name = "" },
            _ => command,
        };
    }
}
