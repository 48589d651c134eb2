using Bunit;
using MeltShop.Web.Components.Keys;

namespace MeltShop.Web.Tests.Components.Keys;

public sealed class KeypadTests : ComponentTest
{
    [Theory]
    [InlineData("en-GB", ".")]
    [InlineData("de-DE", ",")]
    public void Drawn_InALanguage_HasItsDecimalSignAndEveryKey(string language, string sign)
    {
        Speak(language);
        var keys = Render<Keypad>().FindAll("[data-key]").Select(key => key.GetAttribute("data-key")!).ToList();

        Assert.Equal(["1", "2", "3", "4", "5", "6", "7", "8", "9", "0", sign, "-", "<", "back", "next", "close"], keys);
        Assert.Equal("\u2212", Render<Keypad>().Find("[data-key='-']").TextContent);
    }

    [Fact]
    public void Drawn_Unasked_IsHiddenAndNoStopOfTheTabKey()
    {
        var pad = Render<Keypad>();

        Assert.True(pad.Find("#keypad").HasAttribute("hidden"));
        Assert.All(pad.FindAll("button"), key => Assert.Equal("-1", key.GetAttribute("tabindex")));
        Assert.All(pad.FindAll("button"), key => Assert.NotEqual("", key.TextContent.Trim()));
    }
}
