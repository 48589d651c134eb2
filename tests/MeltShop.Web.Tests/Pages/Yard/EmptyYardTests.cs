using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Yard;

namespace MeltShop.Web.Tests.Pages.Yard;

public sealed class EmptyYardTests : ShopTest
{
    protected override Task Prepare() => Task.CompletedTask;

    [Fact]
    public void Yard_Empty_SaysWhatToDo()
    {
        SignIn(Role.Metallurgist);
        var page = Render<YardList>();
        page.WaitForState(() => page.FindAll("[data-state=empty]").Count > 0);

        Assert.Equal("The yard is empty", page.Find(".notice h2").TextContent);
    }

    [Fact]
    public void Material_Unknown_IsMissing()
    {
        SignIn(Role.Metallurgist);
        var page = Render<MaterialDetail>(parameters => parameters.Add(p => p.Id, 4711));

        page.WaitForState(() => page.FindAll("[data-state=missing]").Count > 0);
    }
}
