using System.Globalization;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Entries;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>
/// Ticks a mould off; the next one is taken to be like the last, and its number the next, until somebody types otherwise. What was typed stays,
/// whoever else ticks off meanwhile, until it was accepted.
/// </summary>
public sealed partial class MouldForm
{
    private readonly MouldEntry entry = new();
    private string? offered;
    private string? kept;
    private int times;

    [Parameter, EditorRequired]
    public PouringView Pouring { get; set; } = null!;

    private string Typed => string.Join('\n', entry.Form.Fields.Select(typed => typed.Text));

    protected override void OnInitialized() => entry.Belongs("treatedLadleId", Pouring.Times.TreatedLadleId);

    protected override void OnParametersSet()
    {
        if (offered is null || offered == Typed) Offer();
    }

    private void Say(IReadOnlyDictionary<string, string> handedIn) => (kept, times) = (handedIn.GetValueOrDefault(entry.Label.Path, "").Trim(), times + 1);

    /// <summary>The record may have been read with the mould already, or not yet: then the next is offered once it is.</summary>
    private void GoOn()
    {
        entry.Form.Open();
        entry.Minutes.Showing(null);
        if (Pouring.Moulds.Any(mould => mould.Label == kept)) Offer();
        else offered = Typed;
    }

    private void Offer()
    {
        var last = Pouring.Poured.LastOrDefault();
        entry.Label.Showing(last is null ? "1" : Next(last.Label));
        if (last is not null)
        {
            entry.Kg.Showing(last.Kg);
            entry.Seconds.Showing(Math.Round((last.Entry.Origin.ObservedAt - last.FirstAt).TotalSeconds));
        }

        offered = Typed;
    }

    // The number at its end counts on: 17 after 16, 4-3 after 4-2.
    private static string? Next(string label)
    {
        var head = label[..label.AsSpan().TrimEnd("0123456789").Length];
        return int.TryParse(label[head.Length..], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? head + (number + 1).ToString(CultureInfo.InvariantCulture) : null;
    }
}
