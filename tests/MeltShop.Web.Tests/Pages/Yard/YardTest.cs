using MeltShop.Operations.Sites;
using MeltShop.Operations.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Web.Tests.Pages.Yard;

/// <summary>A yard of three materials; figures of the test's own, no source.</summary>
public abstract class YardTest : ShopTest
{
    protected long PlateId { get; private set; }

    protected override async Task Prepare()
    {
        await The<SetUpSite>().Run(Founder, new(Guid.NewGuid(), Now, "T", "Test foundry", "Europe/Berlin", "EUR"));
        PlateId = await Add("plate", "Plate offcuts", MaterialKind.SteelScrap, 330, "memory", [
            new("C", 0.12, 0.03), new("Si", 0.2), new("Mn", 0.9, 0.25, 92), new("Mo", 0.01)]);
        await Add("pig-low", "Pig iron, low manganese", MaterialKind.PigIron, 520, "standard", [new("C", 4.2), new("Si", 0.8)]);
        await Add("returns-500", "Returns 500-7", MaterialKind.Returns, 250, "certificate", [new("C", 3.6), new("Si", 2.5), new("Mg", 0.04, null, 0)]);
    }

    private async Task<long> Add(
        string code, string name, MaterialKind kind, decimal price, string sourceKind, IReadOnlyList<MaterialPercentInput> percents) =>
        (await The<AddMaterial>().Run(Founder, new(
            Guid.NewGuid(), Now, code, name, kind, MaterialUses.Charge, price, 98, percents, "Test figures", sourceKind,
            Cautions: code == "plate" ? "wet galvanised" : "", IsDemo: code == "plate"))).Value;
}
