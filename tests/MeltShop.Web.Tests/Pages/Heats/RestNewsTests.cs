using MeltShop.Charging.Plans;
using MeltShop.Operations.Charging;
using MeltShop.Web.Pages.Heats;
using MeltShop.Web.Tests.Components;

namespace MeltShop.Web.Tests.Pages.Heats;

/// <summary>Why no rest was found.</summary>
public sealed class RestNewsTests : ComponentTest
{
    [Theory]
    [InlineData(SearchEnd.OutOfTime, "No rest was found in the time that there is.")]
    [InlineData(SearchEnd.Undecided, "the program could not decide it")]
    [InlineData(SearchEnd.WorkerLost, "was lost")]
    [InlineData(SearchEnd.Endless, "nothing bounds its mass")]
    [InlineData(SearchEnd.Proven, "No rest was found.")]
    public void Rest_ThatWasNotFound_SaysWhy(SearchEnd end, string words)
    {
        var news = Render<RestNews>(parameters => parameters
            .Add(p => p.Rest, new RestAnswer(RestStanding.None, null) { End = end }).Add(p => p.Asked, new() { MeltKg = 1000, Materials = [], Limits = [] })
            .Add(p => p.Yard, []).Add(p => p.CapacityKg, 3000).Add(p => p.HasFailed, false).Add(p => p.IsStopped, true).Add(p => p.InFurnaceKg, 950));

        Assert.Contains(words, news.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Contains("Stop, and ask the metallurgist: 950\u00a0kg are in the furnace, which holds 3000\u00a0kg", news.Markup, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SearchEnd.Proven, "can still be kept, but not with the margin that was asked for")]
    [InlineData(SearchEnd.OutOfTime, "Whether they can be with the margin that was asked for was not found out")]
    public void Rest_WithoutTheMargin_ClaimsOnlyWhatIsProven(SearchEnd end, string words)
    {
        var news = Render<RestNews>(parameters => parameters
            .Add(p => p.Rest, new RestAnswer(RestStanding.WithoutMargin, null) { End = end }).Add(p => p.Asked, new() { MeltKg = 1000, Materials = [], Limits = [] })
            .Add(p => p.Yard, []).Add(p => p.CapacityKg, 3000).Add(p => p.HasFailed, false));

        Assert.Contains(words, news.Find(".tag-watch").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Rest_ThatWasNotFoundWhileTheFirstPlanStands_SaysWhoseMassesTheseAre()
    {
        var news = Render<RestNews>(parameters => parameters
            .Add(p => p.Rest, null).Add(p => p.Asked, new() { MeltKg = 1000, Materials = [], Limits = [] })
            .Add(p => p.Yard, []).Add(p => p.CapacityKg, 3000).Add(p => p.HasFailed, true).Add(p => p.InFurnaceKg, 950));

        Assert.Contains("What is in still follows the first plan", news.Find("[data-testid=rest-failed]").TextContent, StringComparison.Ordinal);
    }
}
