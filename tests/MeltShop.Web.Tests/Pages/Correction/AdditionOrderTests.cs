using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Pages.Correction;

namespace MeltShop.Web.Tests.Pages.Correction;

public sealed class AdditionOrderTests
{
    /// <summary>Silicon keeps carbon from dissolving (common practice, no source); of equals the greater mass first.</summary>
    [Fact]
    public void Additions_OfAllKinds_GoInColdMetalThenCarbonThenSilicon()
    {
        MaterialView[] yard = [Material("fesi", (Element.Si, 75)), Material("carbon", (Element.C, 98)), Material("pig", (Element.C, 4.2), (Element.Si, 1)), Material("steel", (Element.C, 0.1))];
        PlanLine[] lines = [Line("fesi", 30), Line("carbon", 5), Line("steel", 20), Line("pig", 40)];

        Assert.Equal(["pig", "steel", "carbon", "fesi"], AdditionOrder.Of(lines, yard).Select(line => line.Code));
    }

    private static PlanLine Line(string code, double kg) => new(code, kg, 0);

    private static MaterialView Material(string code, params (Element Element, double Percent)[] percents) => new(
        1, Guid.Empty, code, code, MaterialKind.FerroAlloy, MaterialUses.BathAddition, 1, null, 100, null, null, null, [], false, true,
        new(1, "invented for a test", "memory", DateTimeOffset.UnixEpoch, null, [.. percents.Select(p => new MaterialPercentView(p.Element, p.Percent, null, null))]));
}
