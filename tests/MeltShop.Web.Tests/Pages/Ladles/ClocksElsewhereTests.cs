using System.Globalization;
using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Castings;
using MeltShop.Web.Pages.Heats;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>The pages about a ladle that show no clock of it: while it is poured, a shared station steps down there no sooner than at its clock.</summary>
public sealed class ClocksElsewhereTests : LadleTest
{
    [Fact]
    public async Task Pages_OfALadleThatIsPoured_SayWhenItsClockBegan()
    {
        SignIn(Role.Melter);
        var id = await Prepared();
        Assert.Empty(Heat());

        Clock.At = Now; // it stands from here
        await Tap(id, 790);
        await EndReaction(id);
        string[] began = [Now.ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture)];

        Assert.Equal(began, Heat());
        Assert.Equal(began, Clocks(Render<WeighingSheet>(sheet => sheet.Add(s => s.HeatId, HeatId))));
        Assert.Equal(began, Clocks(Render<CastingsDetail>(castings => castings.Add(c => c.Id, id))));
    }

    private IEnumerable<string?> Heat() => Clocks(Render<HeatDetail>(heat => heat.Add(h => h.HeatId, HeatId)));

    private static IEnumerable<string?> Clocks<TPage>(IRenderedComponent<TPage> page)
        where TPage : Microsoft.AspNetCore.Components.IComponent
    {
        page.WaitForElement("[data-state=ready]", Patience);
        return page.FindAll("[hidden][data-clock]").Select(clock => clock.GetAttribute("data-end"));
    }
}
