using MeltShop.Web.Components.Units;
using MeltShop.Metallurgy.Elements;
using MeltShop.Web.Pages.Charge;
using MeltShop.Web.Tests.Components;

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
}
