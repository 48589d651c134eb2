using Bunit;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Tests.Components.Fields;

public sealed class LotFieldTests : ComponentTest
{
    [Theory]
    [InlineData(4, null)]
    [InlineData(7, "3 more lie there: type the lot as it stands on the bag.")]
    public void Lots_MoreThanHaveAPress_AreSaid(int lots, string? said)
    {
        var field = Render<LotField>(parameters => parameters
            .Add(p => p.Entry, new EntryForm().Words("lot")).Add(p => p.Label, "Lot")
            .Add(p => p.Lots, [.. Enumerable.Range(1, lots).Select(n => new LotView($"L-{n}", 500, DateTimeOffset.UnixEpoch)), new("L-0", 0, DateTimeOffset.UnixEpoch)]));

        Assert.Equal(4, field.FindAll("[data-lot]").Count);
        Assert.Equal(said, field.FindAll("[data-testid=lots-more]").SingleOrDefault()?.TextContent);
    }
}
