using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;

namespace MeltShop.Web.Tests.Pages.Grades;

/// <summary>One ductile and one grey grade; windows of the test's own, no source.</summary>
public abstract class GradeTest : ShopTest
{
    protected long DuctileId { get; private set; }

    protected override async Task Prepare()
    {
        DuctileId = (await The<AddGrade>().Run(Founder, new(
            Guid.NewGuid(), Now, "EN-GJS-500-7", IronFamily.Ductile, "Test figures, from memory",
            [
                new(WindowStage.Furnace, "C", 3.6, 3.7, 3.8, 0.03), new(WindowStage.Furnace, "Mn", null, null, 0.4, 0.02),
                new(WindowStage.Poured, "C", 3.5, 3.6, 3.7, 0.03), new(WindowStage.Poured, "Mg", 0.035, 0.042, 0.06, 0.002),
            ],
            new(0.042, 0.035, 0.008, null, null, 0.4, 12)))).Value;
        await The<AddGrade>().Run(Founder, new(
            Guid.NewGuid(), Now, "EN-GJL-250", IronFamily.Grey, "Test figures", [new(WindowStage.Poured, "C", 3.2, 3.3, 3.4)], null));
    }

    protected async Task<WindowView?> Window(WindowStage stage, string quantity) =>
        (await The<GradesPage>().Grade(DuctileId, Cancellation))!.At(stage).SingleOrDefault(window => window.Quantity == quantity);
}
