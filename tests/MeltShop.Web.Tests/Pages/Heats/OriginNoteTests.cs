using Bunit;
using MeltShop.Records.Reading;
using MeltShop.Web.Pages.Heats;

namespace MeltShop.Web.Tests.Pages.Heats;

public sealed class OriginNoteTests : HeatTest
{
    private static readonly DateTimeOffset Observed = new(2026, 3, 2, 15, 48, 0, TimeSpan.Zero);

    [Theory]
    [InlineData(0.5, "15:48, Ana")]
    [InlineData(20, "15:48, Ana, entered 16:08")]
    [InlineData(1180, "15:48, Ana, entered 3 Mar 2026 11:28")]
    public void Fact_EnteredLater_SaysWhenAndOnWhichDay(double minutesLater, string words)
    {
        var note = Render<OriginNote>(parameters => parameters.Add(p => p.Origin, new Origin(1, "Ana", Observed, Observed.AddMinutes(minutesLater), null, null, false)));

        Assert.Equal(words, note.Find(".origin").TextContent);
    }
}
