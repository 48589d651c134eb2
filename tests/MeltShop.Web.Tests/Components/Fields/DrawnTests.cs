using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Tests.Components.Fields;

/// <summary>The browser answers a press on the former drawing by the handler of that drawing, until it shows the next.</summary>
public sealed class DrawnTests
{
    [Fact]
    public async Task Press_OnTheFormerDrawing_IsAboutWhatStoodThere()
    {
        List<int> pressed = [];
        var press = Of(pressed);
        var former = press.On(900);
        var now = press.On(2000);
        await former();
        await now();

        Assert.Equal([900, 2000], pressed);
    }

    [Fact]
    public void Handler_OfADrawingThatShowsTheSame_StaysTheSame()
    {
        var press = Of([]);

        Assert.Same(press.On(900), press.On(900));
        Assert.NotSame(press.On(900), press.On(2000));
    }

    private static Drawn<int> Of(List<int> pressed) => new(seen =>
    {
        pressed.Add(seen);
        return Task.CompletedTask;
    });
}
