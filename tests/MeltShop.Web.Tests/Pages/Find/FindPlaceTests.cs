using Bunit;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Finding;
using MeltShop.Web.Pages.Find;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Tests.Pages.Find;

public sealed class FindPlaceTests : DemoShopTest
{
    [Theory]
    [InlineData("0001", "Heat", "/heats/")]
    [InlineData("1041", "Order", "/orders/")]
    [InlineData("wheel", "Order", "/orders/")]
    [InlineData("500-7", "Grade", "/grades/")]
    [InlineData("furnace-1", "Furnace", "/history?furnace=")]
    [InlineData("ladle-1500", "Ladle", "/equipment#ladle-")]
    public void Find_WordsInTheAddress_LeadToWhatIsCalledSo(string words, string kind, string address)
    {
        var row = Open($"/find?words={words}").Find($"[data-kind={kind}]");

        Assert.StartsWith(address, row.GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public void Find_NothingTyped_AsksAndSaysNothing()
    {
        var page = Open("/find");

        Assert.Empty(page.FindAll("[data-testid=found], [data-testid=nothing-found]"));
    }

    [Fact]
    public void Find_NothingCalledSo_SaysSo() => Assert.Contains("xyz", Open("/find?words=xyz").Find("[data-testid=nothing-found]").TextContent, StringComparison.Ordinal);

    [Fact]
    public void Find_Typed_GoesIntoTheAddress()
    {
        var page = Open("/find");
        page.Find("[data-field=words] input").Change(" 0001 ");

        Assert.Equal("?words=0001", new Uri(The<NavigationManager>().Uri).Query);
    }

    /// <summary>A glove has no Enter; where nothing was looked for, nothing has an age.</summary>
    [Fact]
    public void Find_NothingTyped_HasAPressAndNoAge()
    {
        var page = Open("/find");

        Assert.Equal("Find", page.Find("[role=search] button").TextContent);
        Assert.Equal("-1", page.Find("[role=search] button").GetAttribute("tabindex"));
        Assert.Empty(page.FindAll(".as-of"));
    }

    [Fact]
    public async Task Find_InThePseudoLanguage_HasNoWordOutsideItsTexts()
    {
        Speak(PseudoLanguage.Culture);
        var page = Open("/find?words=500-7");

        var found = await The<FindPage>().Load("500-7", ct: Cancellation);
        Assert.Empty(Marks.WordsOutside(page.Nodes, [.. found.Rows.Select(row => row.More).Where(more => more.Length > 0), .. found.Rows.Select(row => row.Code)]));
    }

    private IRenderedComponent<FindPlace> Open(string address)
    {
        SignIn(Role.Melter);
        The<NavigationManager>().NavigateTo(address);
        var page = Render<FindPlace>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);
        return page;
    }
}
