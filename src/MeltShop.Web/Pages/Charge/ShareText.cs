using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Shares, so that a small one is not shown as none.</summary>
public static class ShareText
{
    /// <param name="percent">A share, %.</param>
    /// <returns>With its unit: whole percents from 10 % on, one decimal from 1 % on, two below.</returns>
    public static string Show(double percent) => UnitText.Percent(NumberText.Show(percent, Math.Abs(percent) switch { >= 9.95 => 0, >= 1 => 1, _ => 2 }));
}
