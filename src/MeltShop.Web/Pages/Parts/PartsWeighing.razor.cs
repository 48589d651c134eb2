using MeltShop.Web.Components.Weighing;

namespace MeltShop.Web.Pages.Parts;

/// <summary>A weighing card with a step in every standing.</summary>
public sealed partial class PartsWeighing
{
    private IReadOnlyList<WeighingStep> Steps =>
    [
        new("done", Text["First"], 110, 110, WeighingStanding.Done),
        new("over", Text["Second"], 1766, 1981, WeighingStanding.Over),
        new("next", Text["Third"], 2175.5, 400, WeighingStanding.Next) { Lots = [new("A-0417", 1200), new("B 3", 575.5)] },
        new("later", Text["LongName"], 11750, null, WeighingStanding.Later),
        new("short", Text["Third"], 310, 250, WeighingStanding.Short),
        new("unwanted", Text["Second"], 0, 35, WeighingStanding.Over),
    ];
}
