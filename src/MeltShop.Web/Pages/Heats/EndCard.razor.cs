using MeltShop.Operations;
using MeltShop.Operations.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Closes a heat or calls it off. Neither can be undone, so it is asked once more.</summary>
public sealed partial class EndCard
{
    private readonly CloseEntry close = new();
    private readonly EntryForm cancel = new();
    private readonly TextEntry reason;
    private Ending? asked;
    private Guid? seen;

    public EndCard() => reason = cancel.Words("reason", isRequired: true);

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
    private CancelHeat Cancelling { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    protected override void OnParametersSet()
    {
        close.Belongs("heatId", Heat.Heat.Id);
        close.Belongs("version", seen ?? Heat.Heat.Version);
    }

    private void AskClose()
    {
        (asked, seen) = (Ending.Close, Heat.Heat.Version);
        close.Belongs("version", Heat.Heat.Version);
    }

    private void AskCancel() => (asked, seen) = (Ending.Cancel, Heat.Heat.Version);

    /// <summary>The heel that would stay is drawn again; nothing else.</summary>
    private static void Typed()
    {
    }

    private void Leave() => asked = null;

    private Task CloseRefused() => close.Form.Findings.Any(finding => finding.Code == SeenRow.Code) ? Outdated() : Task.CompletedTask;

    private async Task Cancel() => await After(await HandingIn.Send(cancel, made => Cancelling.Run(
        made.By, new(made.Key, made.ObservedAt, Heat.Heat.Id, seen ?? Heat.Heat.Version, reason.Value!))));

    private async Task After<TResult>(Outcome<TResult>? outcome)
    {
        if (outcome is null) return;
        if (outcome.Succeeded) asked = null;
        else if (outcome.IsStale()) await Outdated();
    }

    /// <summary>What is pressed after that is pressed knowingly: it goes by what the page shows then.</summary>
    private Task Outdated()
    {
        seen = null;
        return Refused.InvokeAsync();
    }
}
