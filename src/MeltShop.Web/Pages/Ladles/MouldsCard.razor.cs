using MeltShop.Operations.Ladles;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>The moulds that were poured, the last one first, and which of them are held and why.</summary>
public sealed partial class MouldsCard
{
    [Parameter, EditorRequired]
    public PouringView Pouring { get; set; } = null!;

    /// <summary>What is left in the ladle by the scales, kg.</summary>
    [Parameter, EditorRequired]
    public double LeftKg { get; set; }

    /// <summary>A sample of this ladle said too little magnesium: all that was poured until then, and until a top-up, is held.</summary>
    [Parameter]
    public DateTimeOffset? LowUntil { get; set; }

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    private int Held => Pouring.Poured.Count(mould => Why(mould) is not null);

    private string? Why(MouldView mould)
    {
        var (kind, stopAt) = mould.LateFor is { } late ? (late, mould.StopAt!.Value)
            : Since(mould) is { } limit ? (limit.Kind, limit.StopAt) : ((PouringLimitKind?)null, default(DateTimeOffset));
        return kind is { } held ? Text["LateFor." + held, Site.Time(stopAt)].Value
            : mould.Entry.Origin.ObservedAt <= LowUntil ? Text["HeldForMagnesium"].Value
            : Pouring.LowSources.FirstOrDefault(low => low.Concerns(mould.Entry.Origin.ObservedAt)) is { } source
                ? Text["HeldForSource", source.Ordinal, source.HeatNumber].Value : null;
    }

    /// <summary>A limit that lies before it by the clock as it stands now, where it was put right since; a release asks for the others too.</summary>
    private PouringLimit? Since(MouldView mould) => Pouring.Times.MgChangedAt is not null ? null
        : PouringLimits.Of(Pouring.Times).FirstOrDefault(limit =>
            limit.Kind is PouringLimitKind.Magnesium or PouringLimitKind.HouseRule && limit.StopAt < mould.Entry.Origin.ObservedAt);
}
