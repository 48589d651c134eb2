using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What came into a ladle, a pouring furnace or a trough from other ladles: who poured what when, and what magnesium the mixture had.</summary>
public sealed partial class CameCard
{
    [Parameter, EditorRequired]
    public PouringView Pouring { get; set; } = null!;

    private LowSource? Low(CameView came) => Pouring.LowSources.FirstOrDefault(low => low.LadleId == came.FromLadleId);
}
