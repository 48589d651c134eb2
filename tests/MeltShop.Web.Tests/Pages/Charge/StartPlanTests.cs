using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using MeltShop.Operations.Charging;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>A heat is started from the plan that was seen, and its page opens for whoever still waits for it.</summary>
public sealed class StartPlanTests : MeltingShop
{
    private readonly TaskCompletionSource<long?> kept = new();
    private int asked;

    [Fact]
    public async Task Start_PressedWhileThePlanIsDrawnAnew_StartsNothingAndSaysSo()
    {
        var card = Draw();
        var press = ulong.Parse(Yes(card).GetAttribute("blazor:onclick")!, CultureInfo.InvariantCulture);
        card.Render(p => p.Add(x => x.IsBarred, true)); // and the press was on its way
#pragma warning disable BL0006 // a press that was on its way can be made in no other way
        await card.InvokeAsync(() => Renderer.DispatchEventAsync(press, new(), new MouseEventArgs()));
#pragma warning restore BL0006

        Assert.Equal("seen.changed", card.Find("[data-testid=findings] li").GetAttribute("data-code"));
        Assert.Equal(0, asked);
    }

    [Fact]
    public async Task Start_PressedOnTheDrawingOfAnotherPlan_StartsNothing()
    {
        var card = Draw();
        var former = Yes(card);
        card.Render(p => p.Add(x => x.Plan, "900 kg"));

        await Assert.ThrowsAsync<Bunit.Rendering.UnknownEventHandlerIdException>(() => former.ClickAsync()); // a browser has it said, and is told that the plan is another one
        Assert.Equal(0, asked);
    }

    [Fact]
    public async Task Start_LeftBeforeItsAnswer_StartsTheHeatAndCallsNobodyBack()
    {
        var plan = await The<PlanCharge>().Run(Founder, new(Guid.NewGuid(), Now, new ChargeChoice(FurnaceId, GradeId, 2000)), Cancellation);
        var card = Draw();
        var press = Yes(card).ClickAsync();
        card.WaitForState(() => asked == 1);
        The<NavigationManager>().NavigateTo("/yard");
        kept.SetResult(plan.Value.PlanId);
        await press;

        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        Assert.Equal(1, await db.Heats.CountAsync(Cancellation));
        Assert.EndsWith("/yard", The<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public void Question_ThatComesWhereStartWas_BeginsWithThePressThatDoesNothing()
    {
        var card = Draw();

        Assert.Equal(["Not yet", "Yes, start the heat"], card.FindAll("[data-testid=start-ask] button").Select(button => button.TextContent));
    }

    private IRenderedComponent<StartPlan> Draw()
    {
        SignIn(Role.Melter);
        var card = Render<StartPlan>(p => p.Add(x => x.Grade, "EN-GJS-500-7").Add(x => x.LiquidKg, 2000).Add(x => x.Furnace, "Furnace 1").Add(x => x.Plan, "2000 kg").Add(x => x.Kept, () =>
        {
            asked++;
            return kept.Task;
        }));
        card.Find("[data-opens=start-ask]").Click();
        return card;
    }

    private static IElement Yes(IRenderedComponent<StartPlan> card) => card.FindAll("[data-testid=start-ask] button").Single(button => button.TextContent == "Yes, start the heat");
}
