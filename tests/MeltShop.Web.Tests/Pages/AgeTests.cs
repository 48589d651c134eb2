using Bunit;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using MeltShop.Web.Pages.Floor;

namespace MeltShop.Web.Tests.Pages;

/// <summary>A page says when what it shows was read: the day too, for it may stand open until tomorrow.</summary>
public sealed class AgeTests : DemoShopTest
{
    [Fact]
    public void Page_ThatIsReadAgain_SaysItsNewAgeWithTheDay()
    {
        SignIn(Role.Melter);
        Clock.At = new(2027, 3, 1, 23, 30, 5, TimeSpan.Zero);
        var page = Render<ShopFloor>();
        page.WaitForAssertion(() => Assert.Equal("As of 2 Mar 2027 00:30:05", page.Find(".as-of").TextContent), Patience); // in the shop's zone

        Clock.At = new(2027, 3, 2, 23, 31, 6, TimeSpan.Zero);
        Assert.Equal("As of 2 Mar 2027 00:30:05", page.Find(".as-of").TextContent);
        The<ChangeNotices>().Publish(new ChangeNotice(ChangeKind.Heat, 1));
        page.WaitForAssertion(() => Assert.Equal("As of 3 Mar 2027 00:31:06", page.Find(".as-of").TextContent), Patience);
    }
}
