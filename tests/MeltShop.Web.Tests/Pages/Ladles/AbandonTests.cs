using Bunit;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Ladles;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>A prepared ladle that is not tapped after all.</summary>
public sealed class AbandonTests : LadleTest
{
    [Fact]
    public async Task Ladle_GivenUp_IsAskedOnceMoreNeedsAReasonAndStaysInTheRecords()
    {
        var id = await Prepared();
        var page = Open(id);
        Press(page, "This ladle will not be tapped");
        HasKeyboard(page);
        await page.WaitForElement("[data-testid=abandon-form]", Patience).SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=abandon-form] [data-code='text.missing']").Count > 0, Patience);
        Assert.Equal(TreatedLadleState.Prepared, (await Treated(id)).Treated!.State);

        page.WaitForElement("[data-testid=abandon-form] [data-field=reason] input", Patience).Change("hook broken");
        await page.WaitForElement("[data-testid=abandon-form]", Patience).SubmitAsync();

        page.WaitForElement("[data-ladle-state=Abandoned]", Patience);
        Assert.Equal(TreatedLadleState.Abandoned, (await Treated(id)).Treated!.State);
        Assert.Empty(page.FindAll("[data-testid=tap-form], [data-testid=abandon-form]"));
    }

    [Fact]
    public async Task Ladle_TappedBySomebodyElseMeanwhile_CannotBeGivenUpAndTheTapIsTold()
    {
        var id = await Prepared();
        var page = Open(id);
        Press(page, "This ladle will not be tapped");
        page.WaitForElement("[data-testid=abandon-form] [data-field=reason] input", Patience).Change("hook broken");
        await Tap(id, 790);
        page.WaitForElement("[data-ladle-state=Tapped]", Patience);

        Assert.Empty(page.FindAll("[data-testid=abandon-form]"));
        Assert.Equal(TreatedLadleState.Tapped, (await Treated(id)).Treated!.State);
    }

    private static void Press(IRenderedComponent<LadleDetail> page, string words)
    {
        page.WaitForState(() => page.FindAll("button").Any(button => button.TextContent.Trim() == words), Patience);
        page.Do(() => page.FindAll("button").Single(button => button.TextContent.Trim() == words).ClickAsync());
    }

    private IRenderedComponent<LadleDetail> Open(long id)
    {
        SignIn(Role.Melter);
        var page = Render<LadleDetail>(parameters => parameters.Add(p => p.Id, id));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }
}
