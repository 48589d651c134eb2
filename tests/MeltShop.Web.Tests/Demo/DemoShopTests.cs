using MeltShop.Records.People;
using MeltShop.Web.Demo;

namespace MeltShop.Web.Tests.Demo;

public class DemoShopTests
{
    private static readonly DemoCatalogue Catalogue = DemoCatalogue.Load();

    [Fact]
    public void Site_AsWritten_HasAKnownZoneAndACurrency()
    {
        Assert.Matches("^[A-Z]{2,4}$", Catalogue.Site.Code);
        Assert.True(TimeZoneInfo.TryFindSystemTimeZoneById(Catalogue.Site.TimeZone, out _));
        Assert.Equal("EUR", Catalogue.Site.Currency);
    }

    [Fact]
    public void People_AsWritten_FillEveryRoleOnce()
    {
        Assert.Equal(Role.All.Order(), Catalogue.People.Select(p => p.Role).Order());
        Assert.Equal(5, Catalogue.People.Select(p => p.UserName).Distinct().Count());
    }

    [Fact]
    public void Furnaces_AsWritten_AreTwoOfSixTonnesAndOneOfTwo()
    {
        Assert.Equal([6000, 6000, 2000], Catalogue.Furnaces.Select(f => f.CapacityKg));
        Assert.All(Catalogue.Furnaces, f => Assert.InRange(f.UsualHeelKg / f.CapacityKg, 0.1, 0.15));
        Assert.Equal("Furnace 1", Catalogue.Furnaces[0].Name);
    }

    /// <summary>Recovery ranges: Elkem Technical Information 9, undated, read in an excerpt.</summary>
    [Theory]
    [InlineData(DemoTreatmentProcess.Sandwich, 35, 70)]
    [InlineData(DemoTreatmentProcess.TundishCover, 50, 80)]
    public void Ladles_RecoveryOfMagnesium_IsInThePublishedRangeOfTheProcess(DemoTreatmentProcess process, double least, double most)
    {
        var ladles = Catalogue.Ladles.Where(l => l.Process == process).ToList();

        Assert.NotEmpty(ladles);
        Assert.All(ladles, l => Assert.InRange(l.MagnesiumRecoveryPercent, least, most));
    }

    [Fact]
    public void Ladles_AsWritten_KeepFreeboardAndNameTheirSources()
    {
        Assert.Equal([1000, 1500, 2000], Catalogue.Ladles.Select(l => l.CapacityKg));
        Assert.All(Catalogue.Ladles, l => Assert.True(l.LargestTreatedKg <= 0.9 * l.CapacityKg));
        Assert.All(Catalogue.Ladles, l => Assert.All(
            new[] { l.Sources.Freeboard, l.Sources.Pocket, l.Sources.Recovery, l.Sources.Fade, l.Sources.HeatLoss }, s => Assert.NotEmpty(s.Text)));
    }
}
