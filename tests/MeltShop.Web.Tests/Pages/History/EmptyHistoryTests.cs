using Bunit;
using MeltShop.Records.People;
using MeltShop.Records.Reading.History;
using MeltShop.Web.Pages.History;

namespace MeltShop.Web.Tests.Pages.History;

public sealed class EmptyHistoryTests : ShopTest
{
    protected override Task Prepare() => Task.CompletedTask;

    [Fact]
    public void History_NoHeatYet_LeadsToThePlan()
    {
        SignIn(Role.Supervisor);
        var page = Render<HistoryList>();
        page.WaitForState(() => page.FindAll("[data-state=empty]").Count > 0);

        Assert.Equal("/charge", page.Find(".notice a").GetAttribute("href"));
    }

    [Fact]
    public void Place_WrittenIntoAnAddress_IsReadAgain()
    {
        var place = new HistoryPlace(new DateTimeOffset(2026, 3, 31, 23, 59, 58, 123, 456, TimeSpan.Zero), 4711);

        Assert.Equal(place, HistoryAddress.ReadPlace(HistoryAddress.Write(place)));
    }
}
