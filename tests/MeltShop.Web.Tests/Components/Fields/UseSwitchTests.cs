using Bunit;
using MeltShop.Operations;
using MeltShop.Records.People;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Tests.Pages;

namespace MeltShop.Web.Tests.Components.Fields;

/// <summary>A switch that is pressed twice on a slow line switches once.</summary>
public sealed class UseSwitchTests : ShopTest
{
    private readonly List<bool> said = [];
    private readonly TaskCompletionSource read = new();

    protected override Task Prepare() => Task.CompletedTask;

    [Fact]
    public async Task Switch_PressedOnceMoreWhileThePageIsReadAnew_SaysItOnce()
    {
        var card = Draw();
        var first = card.Find("form").SubmitAsync();
        card.WaitForState(() => said.Count > 0);
        await card.Find("form").SubmitAsync();

        Assert.Equal([false], said);
        read.SetResult();
        await first;
    }

    [Fact]
    public async Task Switch_PressedOnceMoreOnTheFormerDrawing_IsNotTurnedBack()
    {
        read.SetResult();
        var card = Draw();
        var former = card.FindAll("form").Single();
        await former.SubmitAsync();
        card.Render(p => p.Add(x => x.IsActive, false));

        await Assert.ThrowsAsync<Bunit.Rendering.UnknownEventHandlerIdException>(() => former.SubmitAsync()); // a browser has it said, and the switch finds that it is turned
        Assert.Equal([false], said);
    }

    private IRenderedComponent<UseSwitch> Draw()
    {
        SignIn(Role.Metallurgist);
        return Render<UseSwitch>(p => p.Add(x => x.IsActive, true).Add(x => x.Changed, () => read.Task).Add(x => x.Say, (_, isActive) =>
        {
            said.Add(isActive);
            return Task.FromResult(Outcome<Guid>.Of(Guid.NewGuid()));
        }));
    }
}
