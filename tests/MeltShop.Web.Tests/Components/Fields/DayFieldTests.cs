using Bunit;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Tests.Components.Fields;

public sealed class DayFieldTests : ComponentTest
{
    [Theory]
    [InlineData("en-GB", "2026-04-03", "read as 3 Apr 2026 · the last day")]
    [InlineData("de-DE", "2026-03-04", "read as 4 März 2026 · the last day")]
    [InlineData("de-DE", "", "the last day")]
    public void Day_InALanguage_IsSaidBelowTheField(string language, string text, string note)
    {
        Speak(language);
        var field = Render<DayField>(parameters => parameters.Add(f => f.Entry, new EntryForm().Words("until").Showing(text)).Add(f => f.Label, "Until").Add(f => f.Help, "the last day"));

        Assert.Equal(note, field.Find(".field-note").TextContent);
    }

    [Fact]
    public void Day_ThatIsChosen_IsSaidAtOnce()
    {
        var field = Render<DayField>(parameters => parameters.Add(f => f.Entry, new EntryForm().Words("until")).Add(f => f.Label, "Until"));
        field.Find("input").Change("2026-12-31");

        Assert.Equal("read as 31 Dec 2026", field.Find(".field-note").TextContent);
    }
}
