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

        Assert.StartsWith(words, view.Find(".state").TextContent.Trim(), StringComparison.Ordinal);
        Assert.Equal(state is ViewState.Ready, view.Markup.Contains("the page", StringComparison.Ordinal));
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

    private IRenderedComponent<StateView> Draw(ViewState state) => Render<StateView>(parameters => parameters
        .Add(p => p.State, state).Add(p => p.Empty, "deliver something").Add(p => p.ChildContent, "the page"));
}
