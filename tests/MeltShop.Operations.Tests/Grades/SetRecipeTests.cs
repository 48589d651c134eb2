using MeltShop.Operations.Grades;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Tests.Grades;

/// <summary>Treatment and inoculation of a grade, said after the grade, on both databases.</summary>
public sealed class SetRecipeTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Recipe_SaidAndThenChanged_StandsInTheGradeAndInTheTrail(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var id = (await Shop.Do(shop.Get<AddGrade>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, "bare", IronFamily.Ductile, "test", [new(WindowStage.Furnace, "C", 3.5, null, 3.8)], null))).Value;
        var bare = await Grade(shop, id);

        await Shop.Do(shop.Get<SetRecipe>(), shop.Metallurgist, Command(shop, bare, new(0.042, 0.035, 0.008, null, null, null, null)));
        var said = await Grade(shop, id);
        await Shop.Do(shop.Get<SetRecipe>(), shop.Metallurgist, Command(shop, said, new(0.04, 0.035, 0.008, "mgfesi", "inoculant", 0.4, 10, "punchings", 1.5)));

        Assert.Equal(new RecipeView(0.04, 0.035, 0.008, "mgfesi", "inoculant", 0.4, 10, "punchings", 1.5), (await Grade(shop, id)).Recipe);
        await shop.Refuses(shop.Get<SetRecipe>(), shop.Metallurgist, Command(shop, said, new(0.04, 0.035, 0.008, null, null, null, null)), "version", "version.stale");
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Fact]
    public async Task Recipe_ThatDoesNotFitItsIron_IsRefusedAtItsField()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var ductile = await Grade(shop, shop.DuctileId);
        var grey = await Grade(shop, shop.GreyId);
        var operation = shop.Get<SetRecipe>();

        await shop.Refuses(operation, shop.Melter, Command(shop, grey, new(null, null, null, null, null, null, null)), "", "right.missing");
        await shop.Refuses(operation, shop.Metallurgist, Command(shop, ductile, new(0.04, 0.03, null, null, null, null, null)), "recipe.sulphurLeftPercent", "sulphur.missing");
        await shop.Refuses(operation, shop.Metallurgist, Command(shop, grey, new(0.04, null, null, null, null, null, null)), "recipe.targetMgPercent", "magnesium.inGreyIron");
        GradeRecipeInput uncovered = new(0.04, 0.03, 0.006, null, null, null, null);
        await shop.Refuses(operation, shop.Metallurgist, Command(shop, ductile, uncovered with { CoverCode = "punchings" }), "recipe.coverRatePercent", "number.missing");
        await shop.Refuses(operation, shop.Metallurgist, Command(shop, ductile, uncovered with { CoverRatePercent = 1 }), "recipe.coverCode", "choice.missing");
        await shop.Refuses(operation, shop.Metallurgist, Command(shop, ductile, uncovered with { CoverCode = "punchings", CoverRatePercent = -1 }), "recipe.coverRatePercent", "percent.negative");
    }

    private static SetRecipe.Command Command(Shop shop, GradeView grade, GradeRecipeInput recipe) => new(Guid.NewGuid(), shop.Now, grade.Id, grade.Version, recipe);

    private static async Task<GradeView> Grade(Shop shop, long id) => (await shop.Get<GradesPage>().Grade(id, Soon))!;
}
