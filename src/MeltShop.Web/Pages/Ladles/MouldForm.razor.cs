using System.Globalization;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Entries;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Ticks a mould off; the next one is taken to be like the last, and its number the next, until somebody types otherwise.</summary>
public sealed partial class MouldForm
{
    private readonly MouldEntry entry = new();

    [Parameter, EditorRequired]
    public PouringView Pouring { get; set; } = null!;

    protected override void OnInitialized()
    {
        entry.Belongs("treatedLadleId", Pouring.Times.TreatedLadleId);
        var last = Pouring.Poured.LastOrDefault();
        entry.Label.Showing(last is null ? "1" : Next(last.Label));
        if (last is null) return;
        entry.Kg.Showing(last.Kg);
        entry.Seconds.Showing(Math.Round((last.Entry.Origin.ObservedAt - last.FirstAt).TotalSeconds));
    }

    // The number at its end counts on: 17 after 16, 4-3 after 4-2.
    private static string? Next(string label)
    {
        var head = label[..label.AsSpan().TrimEnd("0123456789").Length];
        return int.TryParse(label[head.Length..], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? head + (number + 1).ToString(CultureInfo.InvariantCulture) : null;
    }
}
