using MeltShop.Web.Components.Weighing;

namespace MeltShop.Web.Pages.Parts;

/// <summary>The weighing card with a step in every state. The materials are invented.</summary>
public sealed partial class PartsWeighing
{
    private readonly IReadOnlyList<WeighingStep> steps =
    [
        new("carbon", "Carburiser, low sulphur", 42.5, 42.6, WeighingStanding.Done),
        new("steel", "Shredded steel", 1850, 2015, WeighingStanding.Over),
        new("pig", "Pig iron, ductile grade", 1200, 400, WeighingStanding.Next),
        new("returns", "Returns, gates and risers, magnesium treated", 1400, null, WeighingStanding.Later),
        new("copper", "Copper", 0, null, WeighingStanding.Later),
    ];
}
