using MeltShop.Metallurgy;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Orders;

internal static class WholePieces
{
    /// <summary>Castings are whole: half of one is told and not rounded.</summary>
    public static IEnumerable<Finding> Check(QuantityEntry pieces) => pieces.Needed == Math.Floor(pieces.Needed) ? [] : [new Finding(pieces.Path, "number.notWhole")];
}
