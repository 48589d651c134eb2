using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Writing;
using MeltShop.Web.Pages.Heats;

namespace MeltShop.Web.Tests.Pages.Heats;

/// <summary>On a busy shift most changes are of other heats and their ladles: the page and the card of one read again for its own.</summary>
public sealed class HeatChangesTests : HeatTest
{
    [Fact]
    public async Task Change_OfAnotherHeatOrItsLadlesAndSamples_DoesNotConcernTheHeat()
    {
        var sample = await GoodSample();
        var heat = await Heat();

        Assert.True(Concerns(heat, ChangeKind.Heat, HeatId));
        Assert.True(Concerns(heat, ChangeKind.Sample, sample));
        Assert.True(Concerns(heat, ChangeKind.Material, 4711)); // whatever lies in the yard is offered
        Assert.True(Concerns(heat, ChangeKind.Instrument, 4711));
        Assert.False(Concerns(heat, ChangeKind.Heat, HeatId + 1));
        Assert.False(Concerns(heat, ChangeKind.Sample, sample + 1));
        Assert.False(Concerns(heat, ChangeKind.TreatedLadle, 4711));
        Assert.False(Concerns(heat, ChangeKind.Order, 1));
    }

    [Fact]
    public async Task Change_WhereTheListsWereCutOrNothingIsShownYet_MayConcernTheHeat()
    {
        Assert.True(Concerns(await Heat() with { More = true }, ChangeKind.TreatedLadle, 4711));
        Assert.True(Concerns(null, ChangeKind.TreatedLadle, 4711));
    }

    private bool Concerns(HeatView? heat, string kind, long id) => HeatChanges.Concern(heat, HeatId, new(kind, id));
}
