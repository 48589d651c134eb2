using MeltShop.Operations.Grades;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Yard;
using MeltShop.Records.Grades;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Tests.Shops;

public sealed partial class Shop
{
    public long SiteId { get; private set; }
    public long FurnaceId { get; private set; }
    public long LadleId { get; private set; }
    public long DuctileId { get; private set; }
    public long GreyId { get; private set; }
    public long PigIronId { get; private set; }
    public long SteelId { get; private set; }
    public long CarburiserId { get; private set; }
    public long SiliconId { get; private set; }
    public long AlloyId { get; private set; }
    public long InoculantId { get; private set; }

    /// <summary>Furnace, ladle, two grades and a yard; all figures are invented for the tests.</summary>
    private async Task Furnish()
    {
        SiteId = (await Get<SetUpSite>().Run(Administrator, new(Guid.NewGuid(), Now, "TB", "Talbrück", "Europe/Berlin", "EUR"))).Value;
        FurnaceId = (await Get<AddFurnace>().Run(Administrator, new(Guid.NewGuid(), Now, "F1", "Furnace 1", 3000, 1800))).Value;
        LadleId = (await Get<AddLadle>().Run(Administrator, new(
            Guid.NewGuid(), Now, "L1", "Ladle 1", "sandwich", 1100, 40, 50, null, 0.001, 5, "invented for a test"))).Value;

        PigIronId = await Material("pig", MaterialKind.PigIron, MaterialUses.Charge, 420, 98, [new("C", 4.2), new("Si", 1.0), new("Mn", 0.1), new("P", 0.03), new("S", 0.01)]);
        SteelId = await Material("steel", MaterialKind.SteelScrap, MaterialUses.Charge, 300, 97, [new("C", 0.1), new("Si", 0.2), new("Mn", 0.6), new("P", 0.02), new("S", 0.02)]);
        CarburiserId = await Material("carbon", MaterialKind.Carburiser, MaterialUses.Charge | MaterialUses.BathAddition, 600, 100, [new("C", 98, null, 90)]);
        SiliconId = await Material("fesi", MaterialKind.FerroAlloy, MaterialUses.Charge | MaterialUses.BathAddition, 1600, 100, [new("Si", 75, null, 92)]);
        AlloyId = await Material("mgfesi", MaterialKind.TreatmentAlloy, MaterialUses.Treatment, 1900, 100, [new("Si", 45), new("Mg", 6)]);
        InoculantId = await Material("inoculant", MaterialKind.Inoculant, MaterialUses.Inoculation, 2100, 100, [new("Si", 72)]);

        DuctileId = await Grade("EN-GJS-500-7", IronFamily.Ductile, new(0.04, 0.03, 0.006, "mgfesi", "inoculant", 0.4, 8),
            new(WindowStage.Furnace, "C", 3.5, 3.65, 3.8, 0.02), new(WindowStage.Furnace, "Si", 1.3, 1.5, 1.8, 0.02),
            new(WindowStage.Furnace, "Mn", null, 0.3, 0.5, 0.01),
            new(WindowStage.Poured, "C", 3.4, 3.6, 3.8), new(WindowStage.Poured, "Si", 2.2, 2.5, 2.8), new(WindowStage.Poured, "Mg", 0.032, 0.04, 0.055));
        GreyId = await Grade("EN-GJL-250", IronFamily.Grey, new(null, null, null, null, "inoculant", 0.2, null),
            new(WindowStage.Furnace, "C", 3.2, 3.3, 3.45, 0.02), new(WindowStage.Furnace, "Si", 1.6, 1.8, 2.0, 0.02),
            new(WindowStage.Poured, "C", 3.15, 3.3, 3.45), new(WindowStage.Poured, "Si", 1.7, 1.9, 2.2));
    }

    /// <summary>Notes what the same rows are called in a copy.</summary>
    private void TakeOver(Shop other) =>
        (SiteId, FurnaceId, LadleId, DuctileId, GreyId, PigIronId, SteelId, CarburiserId, SiliconId, AlloyId, InoculantId) =
        (other.SiteId, other.FurnaceId, other.LadleId, other.DuctileId, other.GreyId, other.PigIronId, other.SteelId, other.CarburiserId,
            other.SiliconId, other.AlloyId, other.InoculantId);

    private async Task<long> Material(
        string code, MaterialKind kind, MaterialUses uses, decimal price, double yield, IReadOnlyList<MaterialPercentInput> percents)
    {
        var id = (await Get<AddMaterial>().Run(Metallurgist, new(
            Guid.NewGuid(), Now, code, code, kind, uses, price, yield, percents, "invented for a test", "memory"))).Value;
        await Get<BookStock>().Run(Melter, new(Guid.NewGuid(), Now, id, StockKind.Counted, 5000));
        return id;
    }

    private async Task<long> Grade(string code, IronFamily family, GradeRecipeInput recipe, params GradeWindowInput[] windows) =>
        (await Get<AddGrade>().Run(Metallurgist, new(Guid.NewGuid(), Now, code, family, "invented for a test", windows, recipe))).Value;
}
