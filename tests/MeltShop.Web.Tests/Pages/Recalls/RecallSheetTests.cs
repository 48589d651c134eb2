using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Recalls;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Pages.Recalls;

public sealed class RecallSheetTests : DemoShopTest
{
    [Fact]
    public void Recall_OfTheTreatmentAlloy_ListsEveryLadleOfTheDemosHeatAndSaysWhatMayHaveLeft()
    {
        var page = Open("?from=Material&of=inoculant-barium");

        Assert.Equal(4, page.FindAll("[data-recall]").Count);
        Assert.Contains("Ladles: 4. Released: 3", page.Find("[data-testid=recall-head]").TextContent, StringComparison.Ordinal);
        Assert.Equal($"{DemoHeatNumber}/1", page.FindAll("[data-recall]")[0].GetAttribute("data-recall"));
    }

    [Theory]
    [InlineData("b-0931", 4)]
    [InlineData("B-12", 1)]
    public void Recall_OfALot_SaysThatLadlesWithoutARecordedLotMayBeMeant(string lot, int ladles)
    {
        var page = Open($"?from=Material&of=inoculant-barium&lot={lot}");

        Assert.Equal(ladles, page.FindAll("[data-recall]").Count);
        Assert.Equal($"{DemoHeatNumber}/2", page.FindAll("[data-recall]").Single(row => row.QuerySelector(".tag-watch") is not null).GetAttribute("data-recall"));
    }

    [Theory]
    [InlineData("", "nothing-asked")]
    [InlineData("?from=Heat&of=OTF-1999-0001", "unknown")]
    [InlineData("?from=nonsense&of=x&heels=99&since=soon", "unknown")]
    public void Recall_WithoutAnAnswer_SaysWhy(string query, string said) => Assert.NotNull(Open(query).Find($"[data-testid={said}]"));

    [Fact]
    public void Question_Typed_GoesIntoTheAddress()
    {
        var page = Open("");
        page.Find("[data-field=from] select").Change("Heat");
        page.Find("[data-field=of] input").Change(DemoHeatNumber);

        var address = Services.GetRequiredService<NavigationManager>().Uri;
        Assert.Contains("from=Heat", address, StringComparison.Ordinal);
        Assert.Contains($"of={DemoHeatNumber}", address, StringComparison.Ordinal);
    }

    [Fact]
    public void Recall_FromAnInstant_StartsAtItAndKeepsItUntilAnotherDayIsChosen()
    {
        const string asked = "?from=Instrument&of=spark-1&since=2026-03-31T06:05:00.000000Z&until=2099-03-31T06:05:00.000000Z";
        var page = Open(asked);
        Assert.Equal("2026-03-31", page.Find("[data-field=since] input").GetAttribute("value"));
        Assert.Contains("08:05", page.Find("[data-field=since] .field-note").TextContent, StringComparison.Ordinal);

        page.Find("[data-field=heels] select").Change("0");
        var addresses = Services.GetRequiredService<NavigationManager>();
        Assert.Contains("since=2026-03-31T06%3A05%3A00.000000Z", addresses.Uri, StringComparison.Ordinal);
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);
        page.Find("[data-field=since] input").Change("2026-04-01");
        Assert.Contains("since=2026-04-01&", addresses.Uri, StringComparison.Ordinal);
        Assert.Contains("until=2099-03-31T06%3A05", addresses.Uri, StringComparison.Ordinal);
    }

    [Fact]
    public void Recall_InThePseudoLanguage_HasNoWordOutsideItsTexts()
    {
        Speak(PseudoLanguage.Culture);

        Assert.Empty(Marks.WordsOutside(Open($"?from=Heat&of={DemoHeatNumber}").Nodes, DemoHeatNumber, "EN-GJS-500-7", "Test Founder"));
    }

    private IRenderedComponent<RecallSheet> Open(string query)
    {
        SignIn(Role.Inspector);
        Services.GetRequiredService<NavigationManager>().NavigateTo("/recall" + query);
        var page = Render<RecallSheet>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);
        return page;
    }
}
