using MeltShop.Operations;
using MeltShop.Operations.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Closes a heat or calls it off. Neither can be undone, so it is asked once more.</summary>
public sealed partial class EndCard
{
    private readonly EntryForm close = new();
    private readonly EntryForm cancel = new();
    private readonly QuantityEntry pigged;
    private readonly TextEntry reason;
    private Ending? asked;
    private Guid? seen;

    public EndCard()
    {
        pigged = close.Quantity("piggedKg", 0, ChargeDraft.MostKg, isRequired: true);
        reason = cancel.Words("reason", isRequired: true);
    }

    private enum Ending
    {
        Close,
        Cancel,
    }

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool MayClose { get; set; }

    [Parameter, EditorRequired]
    public bool MayCancel { get; set; }

    /// <summary>Somebody else was faster: the page has to read again.</summary>
    [Parameter]
    public EventCallback Refused { get; set; }

    [Inject]
    private CloseHeat Closing { get; set; } = null!;

    [Inject]
    private CancelHeat Cancelling { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private void AskClose() => (asked, seen) = (Ending.Close, Heat.Heat.Version);

    private void AskCancel() => (asked, seen) = (Ending.Cancel, Heat.Heat.Version);

    /// <summary>The heel that would stay is drawn again; nothing else.</summary>
    private static void Typed()
    {
    }

    private void Leave() => asked = null;

    private async Task Close() => await After(await HandingIn.Send(close, made => Closing.Run(
        made.By, new(made.Key, made.ObservedAt, Heat.Heat.Id, seen ?? Heat.Heat.Version, pigged.Needed))));

    private async Task Cancel() => await After(await HandingIn.Send(cancel, made => Cancelling.Run(
        made.By, new(made.Key, made.ObservedAt, Heat.Heat.Id, seen ?? Heat.Heat.Version, reason.Value!))));

    private async Task After<TResult>(Outcome<TResult>? outcome)
    {
        if (outcome is null) return;
        if (outcome.Succeeded) asked = null;
        else if (outcome.IsStale())
        {
            // What is pressed after that is pressed knowingly: it goes by what the page shows then.
            seen = null;
            await Refused.InvokeAsync();
        }
    }
}
