using MeltShop.Operations.Grades;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records.Grades;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Grades;

public sealed class GradeTests(OneShop one) : IClassFixture<OneShop>
{
    private readonly Shop shop = one.Shop;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    public static TheoryData<string, string, string> Refused => new()
    {
        { "crossed", "windows[1].least", "window.crossed" },
        { "aim", "windows[1].aim", "window.aimOutside" },
        { "empty", "windows[1]", "window.empty" },
        { "margin", "windows[1].margin", "window.marginTooWide" },
        { "quantity", "windows[1].quantity", "quantity.unknown" },
        { "pouredOnly", "windows[1].quantity", "quantity.pouredOnly" },
        { "untreatedOnly", "windows[1].quantity", "quantity.untreatedOnly" },
        { "treatedOnly", "windows[1].quantity", "quantity.treatedOnly" },
        { "bound", "windows[1].most", "bound.outOfRange" },
        { "twice", "windows[1].quantity", "window.twice" },
        { "code", "code", "code.taken" },
        { "recipe", "recipe.sulphurLeftPercent", "sulphur.missing" },
        { "target", "recipe.targetMgPercent", "magnesium.targetBelowFloor" },
        { "grey", "recipe.targetMgPercent", "magnesium.inGreyIron" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public Task AddGrade_WrongInput_IsRefusedAtItsField(string what, string path, string code) =>
        shop.Refuses(shop.Get<AddGrade>(), shop.Metallurgist, Wrong(what), path, code);

    [Fact]
    public async Task ChangeWindow_OneOrANewOne_GivesTheGradeANewVersion()
    {
        await using var db = shop.Db();
        var seen = (await db.Grades.AsNoTracking().SingleAsync(g => g.Id == shop.GreyId, Soon)).Version;
        ChangeWindow.Command Change(Guid version, string quantity, double? least, double? most) =>
            new(Guid.NewGuid(), shop.Now, shop.GreyId, version, WindowStage.Furnace, quantity, least, null, most, 0.01);

        var first = await Shop.Do(shop.Get<ChangeWindow>(), shop.Metallurgist, Change(seen, "Si", 1.7, 1.9));
        Assert.NotEqual(seen, first.Value);
        await shop.Refuses(shop.Get<ChangeWindow>(), shop.Metallurgist, Change(seen, "Si", 1.6, 1.9), "version", "version.stale");
        await shop.Refuses(shop.Get<ChangeWindow>(), shop.Metallurgist, Change(first.Value, "Si", 2, 1), "window.least", "window.crossed");
        await Shop.Do(shop.Get<ChangeWindow>(), shop.Metallurgist, Change(first.Value, "Mn", null, 0.8));

        var windows = await db.GradeWindows.AsNoTracking().Where(w => w.GradeId == shop.GreyId && w.Stage == WindowStage.Furnace).ToListAsync(Soon);
        Assert.Equal((1.7, 1.9), (windows.Single(w => w.Quantity == "Si").Least, windows.Single(w => w.Quantity == "Si").Most));
        Assert.Equal(0.8, windows.Single(w => w.Quantity == "Mn").Most);
    }

    private AddGrade.Command Wrong(string what)
    {
        var command = new AddGrade.Command(
            Guid.NewGuid(), shop.Now, $"grade-{Guid.NewGuid()}", IronFamily.Ductile, "invented for a test", [], new(0.04, 0.03, 0.006, null, null, null, null));
        AddGrade.Command Second(string quantity, double? least, double? aim, double? most, double margin = 0) => command with
        {
            Windows = [new(WindowStage.Poured, "C", 3.5, null, 3.8), new(WindowStage.Poured, quantity, least, aim, most, margin)],
        };
        return what switch
        {
            "crossed" => Second("Si", 3, null, 2),
            "aim" => Second("Si", 2, 1.9, 3),
            "empty" => Second("Si", null, null, null),
            "margin" => Second("Si", 2, null, 2.1, 0.06),
            "quantity" => Second("Sulphur", 0, null, 1),
            "pouredOnly" => command with { Windows = [new(WindowStage.Furnace, "C", 3.5, null, 3.8), new(WindowStage.Furnace, "ferritePercent", 90, null, null)] },
            "untreatedOnly" => Second("manganeseBalance", 0.2, null, 0.4),
            "treatedOnly" => Second("traceFactor", null, null, 0.9) with { Family = IronFamily.Grey, Recipe = null },
            "bound" => Second("Sc", 0.9, null, 4),
            "twice" => Second("C", 3.5, null, 3.8),
            "code" => command with { Code = "EN-GJS-500-7" },
            "recipe" => command with { Recipe = command.Recipe! with { SulphurLeftPercent = null } },
            "target" => command with { Recipe = command.Recipe! with { TargetMgPercent = 0.02 } },
            _ => command with { Family = IronFamily.Grey },
        };
    }
}
