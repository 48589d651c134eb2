using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>A ladle whose iron came into this one came back with too little magnesium: what was poured since then is held for it.</summary>
public sealed partial class LowSourceCard
{
    [Parameter, EditorRequired]
    public PouringView Pouring { get; set; } = null!;

    private List<string> Moulds(LowSource low) => [.. Pouring.Poured.Where(m => low.Concerns(m.Entry.Origin.ObservedAt)).Select(m => m.Label)];
}
