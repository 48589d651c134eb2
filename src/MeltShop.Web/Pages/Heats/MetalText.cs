using MeltShop.Web.Pages.Charge;

namespace MeltShop.Web.Pages.Heats;

internal static class MetalText
{
    /// <summary>A change of the ledger with its sign.</summary>
    public static string Signed(double kg) => (kg < 0 ? Components.Fields.NumberText.Minus : '+') + MassText.Show(Math.Abs(kg));
}
