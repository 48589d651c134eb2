using Bunit;
using MeltShop.Web.Components.States;

namespace MeltShop.Web.Tests.Components.States;

public sealed class StateViewTests : ComponentTest
{
    [Theory]
    [InlineData(ViewState.Loading, "Loading …")]
    [InlineData(ViewState.Missing, "This record does not exist, or no longer.")]
    [InlineData(ViewState.Failed, "This could not be loaded. Nothing is lost.")]
    [InlineData(ViewState.Empty, "deliver something")]
    [InlineData(ViewState.Ready, "the page")]
    public void Drawn_State_ShowsItsWordsOnly(ViewState state, string words)
    {
        var view = Draw(state);

        Assert.Contains(words, view.Find(".state").TextContent, StringComparison.Ordinal);
        Assert.Equal(state is ViewState.Ready, view.Markup.Contains("the page", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(ViewState.Missing, true, "H1")]
    [InlineData(ViewState.Missing, false, "H2")]
    [InlineData(ViewState.Failed, true, "H1")]
    [InlineData(ViewState.Failed, false, "H2")]
    public void Heading_WhereThePageHasNone_IsThatOfThePage(ViewState state, bool isPage, string tag)
    {
        var view = Render<StateView>(parameters => parameters.Add(p => p.State, state).Add(p => p.IsPage, isPage).Add(p => p.ChildContent, "<h1>the page</h1>"));

        Assert.Equal(tag, view.Find(".notice-heading").TagName);
        Assert.Equal(state is ViewState.Failed ? "alert" : null, view.Find(".notice").GetAttribute("role"));
    }

    [Fact]
    public void Missing_Record_LeadsToTheSearch() => Assert.Equal("/find", Draw(ViewState.Missing).Find("a").GetAttribute("href"));

    [Fact]
    public void Loading_State_IsSaidAndMarkedBusy()
    {
        var view = Draw(ViewState.Loading);

        Assert.Equal("true", view.Find(".state").GetAttribute("aria-busy"));
        Assert.Equal("Loading …", view.Find("[role=status]").TextContent);
    }

    [Fact]
    public void Again_AfterAFailure_LoadsAgain()
    {
        var loads = 0;
        var view = Render<StateView>(parameters => parameters
            .Add(p => p.State, ViewState.Failed).Add(p => p.Again, () => loads++).Add(p => p.ChildContent, "the page"));
        view.Find("button").Click();

        Assert.Equal(1, loads);
    }

    [Theory]
    [InlineData(ViewState.Ready, true)]
    [InlineData(ViewState.Empty, true)]
    [InlineData(ViewState.Failed, false)]
    [InlineData(ViewState.Loading, false)]
    public void Age_OfWhatIsShown_IsSaidWhereNothingIsThereYetToo(ViewState state, bool isSaid)
    {
        var view = Render<StateView>(parameters => parameters
            .Add(p => p.State, state).Add(p => p.AsOf, "2 Mar 2026 06:42:10").Add(p => p.Empty, "deliver something").Add(p => p.ChildContent, "the page"));

        Assert.Equal(isSaid ? ["As of 2 Mar 2026 06:42:10"] : [], view.FindAll(".as-of").Select(age => age.TextContent));
    }

    [Fact]
    public void Old_WhatIsShown_StaysBelowTheWordsAndIsReadAgain()
    {
        var loads = 0;
        var view = Render<StateView>(parameters => parameters
            .Add(p => p.State, ViewState.Ready).Add(p => p.IsOld, true).Add(p => p.Again, () => loads++).Add(p => p.ChildContent, "the page"));
        Assert.Contains("what stands here is old", view.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Contains("the page", view.Find(".state").TextContent, StringComparison.Ordinal);
        view.Find("button").Click();

        Assert.Equal(1, loads);
    }

    private IRenderedComponent<StateView> Draw(ViewState state) => Render<StateView>(parameters => parameters
        .Add(p => p.State, state).Add(p => p.Empty, "deliver something").Add(p => p.ChildContent, "the page"));
}
