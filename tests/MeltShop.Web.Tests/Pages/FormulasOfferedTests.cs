using System.Reflection;
using System.Text.RegularExpressions;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Grades;
using MeltShop.Metallurgy.Heat;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Tests.Repository;

namespace MeltShop.Web.Tests.Pages;

/// <summary>Where a page shows what a formula says, the formula and its source are one press away.</summary>
public sealed partial class FormulasOfferedTests
{
    /// <summary>Of the calculations that are asked for over HTTP, of the guides, or only in the docs: no page shows their result.</summary>
    private static readonly Formula[] NotOnAPage =
    [
        Saturation.LongFormula, LiquidusCalibration.Formula, EutecticTemperature.GreyFormula, EutecticTemperature.WhiteFormula, WhiteCup.SiliconFormula,
        CarbonSolubility.Formula, CrucibleReaction.EquilibriumFormula, CrucibleReaction.BoilingFormula, CrucibleReaction.DriftFormula, GreyStrength.MaturityFormula, Holding.Formula, LadleLoss.Formula, Addition.Formula, SimpleAddition.Formula, MagnesiumYield.Formula, Fade.ExponentialFormula, FadeFit.Formula,
        MagnesiumFloor.FreeFormula, MagnesiumVapour.Formula, TundishHole.Formula, InoculationFade.Formula, InoculationFadeFit.Formula, Capability.PotentialFormula, Capability.Formula,
        AustemperingGuide.Formula,
    ];

    [Fact]
    public void Formula_EachThatAPageShows_IsOfferedThere()
    {
        var offered = Checkout.FilesEndingIn(".razor", ".razor.cs", "QuantityFormulas.cs").Where(file => !file.Contains("/Parts/", StringComparison.Ordinal))
            .SelectMany(file => Named().Matches(Checkout.Read(file))).Select(match => match.Value).ToHashSet();

        Assert.Equal("", string.Join(", ", Catalogue.All.Except(NotOnAPage).Select(Name).Where(name => !offered.Contains(name))));
        Assert.Equal("", string.Join(", ", NotOnAPage.Select(Name).Where(offered.Contains)));
    }

    [Fact]
    public void Quantity_ThatAWindowCanBoundAndIsNoElement_HasItsFormula() =>
        Assert.Equal("", string.Join(", ", WindowQuantity.Derived.Where(quantity => QuantityFormulas.Of(quantity.Name) is null).Select(quantity => quantity.Name)));

    private static string Name(Formula formula) => typeof(Catalogue).Assembly.GetTypes()
        .SelectMany(type => type.GetProperties(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly).Where(p => p.PropertyType == typeof(Formula)).Select(p => (type, p)))
        .Where(of => ReferenceEquals(of.p.GetValue(null), formula)).Select(of => $"{of.type.Name}.{of.p.Name}").Single();

    [GeneratedRegex(@"\b[A-Z]\w+\.\w*Formula\b")]
    private static partial Regex Named();
}
