using MeltShop.Charging.Choosing;
using MeltShop.Charging.Plans;
using MeltShop.Web.Components.Units;
using MeltShop.Metallurgy.Elements;
using MeltShop.Web.Pages.Charge;
using MeltShop.Web.Tests.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Tests.Pages.Charge;

public sealed class FigureTests : ComponentTest
{
    [Theory]
    [InlineData(0.0, "0\u00a0kg")]
    [InlineData(1958.4, "1958\u00a0kg")]
    [InlineData(99.72, "99.7\u00a0kg")]
    [InlineData(1.964, "1.96\u00a0kg")]
    [InlineData(0.0031, "0.0031\u00a0kg")]
    public void Mass_AnySize_HasTheDecimalsOfItsScaleAndItsUnit(double kg, string words) => Assert.Equal(words, MassText.Show(kg));

    [Theory]
    [InlineData(35.04, "35\u00a0%")]
    [InlineData(9.97, "10\u00a0%")]
    [InlineData(9.34, "9.3\u00a0%")]
    [InlineData(0.035, "0.04\u00a0%")]
    public void Share_Small_IsNotShownAsNone(double percent, string words) => Assert.Equal(words, ShareText.Show(percent));

    [Theory]
    [InlineData(3.634, "3.63")]
    [InlineData(0.0, "0.00")]
    [InlineData(0.0004, "0.0004")]
    public void Percent_Trace_IsNotShownAsZero(double percent, string words) => Assert.Equal(words, PercentText.Show(Element.C, percent));

    [Theory]
    [InlineData(89.99999, "90")] // a plan of 90 % that sits on its bound
    [InlineData(98.7, "98")]
    [InlineData(99.0, "99")]
    [InlineData(99.5, "99.5")]
    [InlineData(99.9968, "99.99")]
    [InlineData(100.0, "99.99")]
    public void Safety_OfHeats_IsNeverRoundedUp(double percent, string words) => Assert.Equal(words, SafetyText.OfHeats(percent));

    [Fact]
    public void Plan_WithoutACharge_SaysWhetherTheProgramFailed()
    {
        var none = new PlanToChoose { Kind = PlanKind.Safest, Status = PlanStatus.TimeLimit };
        var text = Services.GetRequiredService<IStringLocalizer<Web.Texts.Charge>>();

        Assert.Equal("none was found", text[PlanChoices.WhyNone(none)]);
        Assert.StartsWith("The program could not make this plan.", text[PlanChoices.WhyNone(none with { Fault = "a miss" })], StringComparison.Ordinal);
    }

    [Fact]
    public void Clash_OfATraceBound_NamesItsDigits() => Assert.Contains("most 0.0001\u00A0%", ClashText.Of(
        Services.GetRequiredService<IStringLocalizer<Web.Texts.Charge>>(), Services.GetRequiredService<IStringLocalizer<Web.Texts.Limits>>(), new("Cu", "max", 0.0001, 0.2)), StringComparison.OrdinalIgnoreCase);
}
