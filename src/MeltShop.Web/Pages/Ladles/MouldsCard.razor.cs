using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>The moulds that were poured, the last one first, and which of them are held and why.</summary>
public sealed partial class MouldsCard
{
    [Parameter, EditorRequired]
    public PouringView Pouring { get; set; } = null!;

    [Parameter, EditorRequired]
    public double TappedKg { get; set; }

    /// <summary>A sample of this ladle said too little magnesium: all that was poured until then, and until a top-up, is held.</summary>
    [Parameter]
    public DateTimeOffset? LowUntil { get; set; }

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    private int Held => Pouring.Poured.Count(mould => Why(mould) is not null);

    private double LeftKg => TappedKg + Pouring.CameKg - Pouring.OutKg;

    private string? Why(MouldView mould) => mould.LateFor is { } kind ? Text["LateFor." + kind, Site.Time(mould.StopAt!.Value)].Value
        : mould.Entry.Origin.ObservedAt <= LowUntil ? Text["HeldForMagnesium"].Value : null;
}
