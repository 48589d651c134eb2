using MeltShop.Charging.Formulation;
using MeltShop.Charging.Problems;
using MeltShop.Charging.Tests.Support;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using static MeltShop.Charging.Tests.Support.Case;

namespace MeltShop.Charging.Tests.Formulation;

/// <summary>How far a material can go, and what a melt says of itself: a thousand times 1000 kg are a million.</summary>
public class MeltTests
{
    private static readonly ChargeMaterial Steel = Material("steel", 300);
    private static readonly ChargeMaterial Dross = Material("dross", -10, (Element.Parse("Zn"), 100)).Yielding(50, (Element.Parse("Zn"), 0)); // brings no liquid

    [Fact]
    public void Material_GoesToItsBoundOrAThousandTimesTheMelt()
    {
        Assert.Equal([1e6, 250, 1e6, 0], Most(Full(1000), Steel, Steel with { AvailableKg = 250 }, Steel with { AvailableKg = 5e6 }, Steel with { MaxPercent = 0 }));
        Assert.Equal([1e6, 5e6], Most(Full(1000), Dross, Dross with { AvailableKg = 5e6 })); // a stock of what brings no liquid is a bound, however large
        Assert.Equal([1e6, 5e6], Most(Full(double.PositiveInfinity), Steel, Steel with { AvailableKg = 5e6 })); // and of steel where the bath has no end
        Assert.Equal([3e6], Most(Full(3000), Steel)); // a melt that may be three times its scale with its tolerance
        Assert.Equal([1e6], Most(Full(500), Steel));
        Assert.Equal(40, Full(1000).MostKg(MeltColumn.Of(Steel with { MaxPercent = 0 }, 0, 0, weighedKg: 40))); // what is in stays
    }

    [Fact]
    public void Charge_ThatOnlyTheProgramHolds_IsEndless()
    {
        var melt = Full(1000) with { Columns = [.. new[] { Dross, Dross with { Code = "stock", AvailableKg = 1e6 }, Dross with { Code = "none", MaxPercent = 0 }, Steel }.Select(MeltColumn.Of)] };

        Assert.Equal(["dross"], melt.Endless([1e6, 1e6, 0, 900]));
        Assert.Equal(["dross"], melt.Endless([1e6 - 0.5, 0, 0, 900])); // to what a solver leaves over
        Assert.Empty(melt.Endless([1e6 - 2, 1e6, 0, 900]));
    }

    [Fact]
    public void LiquidMass_IsFixedWhereNoToleranceIsGiven()
    {
        Assert.True(Of(new() { MeltKg = 1000, Materials = [Steel], Limits = [] }).LiquidIsFixed);
        Assert.False(Of(new() { MeltKg = 1000, MeltToleranceKg = 1, Materials = [Steel], Limits = [] }).LiquidIsFixed);
    }

    [Fact]
    public void Scale_OfNothing_IsOneKilogram() => Assert.Equal([1, 0.5, 3000], new double[] { 0, 0.5, 3000 }.Select(Melt.Scale));

    [Fact]
    public void Melt_WithOneMaterialOfAKind_HasThatKind()
    {
        Assert.True((Full(1000) with { Columns = [MeltColumn.Of(Steel), MeltColumn.Of(Steel with { PieceKg = 100 })] }).HasPieces);
        Assert.False((Full(1000) with { Columns = [MeltColumn.Of(Steel)] }).HasPieces);
        Assert.True((Full(1000) with { Columns = [MeltColumn.Of(Steel), MeltColumn.Of(Steel with { LeastIfUsedKg = 0.1 })] }).HasLeastIfUsed);
        Assert.False((Full(1000) with { Columns = [MeltColumn.Of(Steel), MeltColumn.Of(Steel with { LeastIfUsedKg = 0 })] }).HasLeastIfUsed); // any mass will do
    }

    private static double[] Most(Melt melt, params ChargeMaterial[] materials) => [.. materials.Select(m => melt.MostKg(MeltColumn.Of(m)))];

    private static Melt Full(double mostLiquidKg) => new() { Start = Metal.None, ScaleKg = 1000, Limits = [], Columns = [], MostLiquidKg = mostLiquidKg };

    private static Melt Of(ChargeProblem problem) => ChargeOptimiser.MeltOf(problem);
}
