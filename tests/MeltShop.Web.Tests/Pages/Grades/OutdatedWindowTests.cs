using Bunit;
using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Pages.Grades;

namespace MeltShop.Web.Tests.Pages.Grades;

public sealed class OutdatedWindowTests : GradeTest
{
    [Fact]
    public async Task Window_OfAnotherElementChangedMeanwhile_IsNamedWithWhatItWas()
    {
        SignIn(Role.Metallurgist);
        var page = Render<GradeDetail>(parameters => parameters.Add(p => p.Id, DuctileId));
        page.WaitForElement("[data-stage=Furnace] [data-quantity=Mn] button").Click();
        page.WaitForElement("[data-field='window.most'] input").Change("0.5");
        var version = (await The<GradesPage>().Grade(DuctileId, Cancellation))!.Version;
        await The<ChangeWindow>().Run(
            Founder, new(Guid.NewGuid(), Now, DuctileId, version, WindowStage.Poured, "Mg", 0.035, 0.045, 0.06, 0.002), Cancellation);

        await page.Find("[data-testid=window-form]").SubmitAsync();

        var told = page.WaitForElement("[data-testid=what-changed] li");
        Assert.Equal("poured, Mg: aim: 0.042 → 0.045", told.TextContent);
        Assert.Equal("0.5", page.Find("[data-field='window.most'] input").GetAttribute("value"));
    }
}
