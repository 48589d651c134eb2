using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Yard;
using MeltShop.Web.Demo;

namespace MeltShop.Web.Tests.Demo;

public class DemoMaterialsTests
{
    private static readonly DemoCatalogue Catalogue = DemoCatalogue.Load();

    public static TheoryData<string> Codes => [.. Catalogue.Materials.Select(m => m.Code)];

    [Fact]
    public void Load_AllFiles_HoldsFiftyTwoMaterialsOfEveryKindWithUniqueCodes()
    {
        Assert.Equal(52, Catalogue.Materials.Count);
        Assert.Equal(52, Catalogue.Materials.Select(m => m.Code).Distinct().Count());
        Assert.Equal(Enum.GetValues<MaterialKind>(), Catalogue.Materials.Select(m => m.Kind).Distinct().Order());
    }

    [Theory, MemberData(nameof(Codes))]
    public void Material_AsWritten_HasSourceNoteUsesAndInventedFigures(string code)
    {
        var material = Catalogue.Material(code);

        Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", material.Code);
        Assert.NotEmpty(material.Uses);
        Assert.True(material.Source.Text.Length > 20, "no source");
        Assert.True(material.TypicalNote.Length > 20, "no note how the value was chosen");
        Assert.DoesNotContain("://", material.Source.Text);
        Assert.True(material.Demo.PricePerTonne > 0);
        Assert.True(material.Demo.StockKg > 0);
        Assert.True(material.Demo.TypicalPieceKg is null or > 0);
        Assert.True(material.Demo.BulkDensityTonnesPerM3 is > 0.3 and < 5);
        Assert.Equal(material.MaxSharePercent is null, material.MaxShareReason is null);
    }

    [Theory, MemberData(nameof(Codes))]
    public void Material_AsWritten_HasYieldRecoveriesAndScatterInRange(string code)
    {
        var material = Catalogue.Material(code);

        Assert.InRange(material.MetallicYieldPercent, 85, 100);
        Assert.All(material.RecoveryPercent, r => Assert.InRange(r.Value, 0, 100));
        Assert.All(material.RecoveryPercent.Keys, e => Assert.True(material.Analysis.Has(e), $"recovery of {e}, which the analysis lacks"));
        Assert.All(material.Spread, s => Assert.True(s.Value > 0 && s.Value < material.Analysis[s.Key], $"scatter of {s.Key}"));
        Assert.InRange(Arrival.PerKilogram(material.Composition).LiquidKg, 0.65, 1);
    }

    /// <summary>Ash, silica and rock must not arrive as iron: only what the printed figures leave to metal may.</summary>
    [Theory, MemberData(nameof(Codes))]
    public void Material_PartThatDoesNotMeltIn_IsInTheYieldAndPrintedFiguresComeBack(string code)
    {
        var material = Catalogue.Material(code);
        if (material.AsWeighed is not { } printed)
        {
            Assert.NotEqual(MaterialKind.Carburiser, material.Kind);
            return;
        }

        foreach (var (element, percent) in printed)
            Assert.Equal(percent, material.MetallicYieldPercent / 100 * material.Analysis.OrZero(element), 0.002);
        if (material.Kind == MaterialKind.Carburiser) Assert.True(Arrival.PerKilogram(material.Composition).IronKg < 0.0001);
    }

    [Fact]
    public void Returns_Melted_BringNoMagnesium()
    {
        var ductile = Catalogue.Materials.Where(m => m.Kind == MaterialKind.Returns && m.Analysis.Has(Element.Mg)).ToList();

        Assert.Equal(3, ductile.Count);
        Assert.All(ductile, m => Assert.Equal(0, Arrival.PerKilogram(m.Composition).ElementKg(Element.Mg)));
    }

    [Fact]
    public void ChargeMaterials_AllOfThem_CanBeChargedFromATypicalYard()
    {
        var charge = Catalogue.Materials.Where(m => m.Uses.Contains(MaterialUses.Charge)).ToList();

        Assert.True(charge.Count >= 25, $"{charge.Count} materials to charge");
        Assert.All(Catalogue.Materials.Where(m => m.Kind == MaterialKind.TreatmentAlloy), m => Assert.Equal([MaterialUses.Treatment], m.Uses));
        Assert.All(Catalogue.Materials.Where(m => m.Kind == MaterialKind.TreatmentAlloy), m => Assert.False(m.RecoveryPercent.ContainsKey(Element.Mg)));
    }

    /// <summary>
    /// Sources: carburiser 85 to 95 % in the cold charge and 75 % and less late, a supplier's page on charging an induction furnace, undated; silicon carbide on the
    /// surface of the bath almost half of that in the solid charge, Stojczew and others, Archives of Foundry Engineering, 2014. Both read in excerpts.
    /// </summary>
    [Fact]
    public void Recovery_OfWhatGoesInLate_IsAsPublished()
    {
        var carburisers = Catalogue.Materials.Where(m => m.Kind == MaterialKind.Carburiser).ToList();
        var carbide = Catalogue.Material("silicon-carbide-88");

        Assert.Equal(8, carburisers.Count);
        Assert.All(carburisers, m => Assert.InRange(m.RecoveryPercent[Element.C], 85, 95));
        Assert.All(carburisers, m => Assert.InRange(m.BathRecoveryPercent[Element.C], 60, 75));
        Assert.InRange(carbide.BathRecoveryPercent[Element.Si] / carbide.RecoveryPercent[Element.Si], 0.4, 0.6);
    }

    [Fact]
    public void BathRecovery_Named_IsOfAnElementOfTheAnalysisAndSaysWhereItComesFrom()
    {
        Assert.All(Catalogue.Materials, m => Assert.Equal(m.BathRecoveryNote is null, m.BathRecoveryPercent.Count == 0));
        Assert.All(Catalogue.Materials.SelectMany(m => m.BathRecoveryPercent, (m, r) => (Material: m, Recovery: r)), named =>
        {
            Assert.True(named.Material.Analysis.Has(named.Recovery.Key), $"recovery of {named.Recovery.Key} of {named.Material.Code}");
            Assert.InRange(named.Recovery.Value, 0, 100);
        });
    }

    /// <summary>Source: EU-27 Steel Scrap Specification, May 2007; the table of residuals from memory.</summary>
    [Theory]
    [InlineData("steel-e1", 0.400, 0.020, 0.300)]
    [InlineData("steel-e3", 0.250, 0.010, 0.250)]
    [InlineData("rebar-ehrb", 0.450, 0.030, 0.350)]
    public void OldScrap_ResidualsOfTheEuropeanList_AreKept(string code, double copper, double tin, double chromiumNickelMolybdenum)
    {
        var analysis = Catalogue.Material(code).Analysis;

        Assert.InRange(analysis.OrZero(Element.Cu), 0.7 * copper, copper);
        Assert.InRange(analysis.OrZero(Element.Sn), 0.7 * tin, tin);
        Assert.InRange(analysis.OrZero(Element.Cr) + analysis.OrZero(Element.Ni) + analysis.OrZero(Element.Mo), 0.7 * chromiumNickelMolybdenum, chromiumNickelMolybdenum);
    }

    /// <summary>Source as above: new scrap has one limit on the sum.</summary>
    [Theory]
    [InlineData("steel-e2")]
    [InlineData("steel-e6-bales")]
    [InlineData("steel-e8")]
    public void NewScrap_SummedResidualsOfTheEuropeanList_AreKept(string code)
    {
        var analysis = Catalogue.Material(code).Analysis;
        Element[] residuals = [Element.Cu, Element.Sn, Element.Cr, Element.Ni, Element.Mo];

        Assert.InRange(residuals.Sum(analysis.OrZero), 0.2, 0.3);
    }
}
