using MeltShop.Operations.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>A prepared ladle that will not be tapped. It cannot be undone, so it is asked once more, with the reason.</summary>
public sealed partial class AbandonForm
{
    private readonly EntryForm form = new();
    private readonly SeenVersion seen = new();
    private readonly TextEntry reason;
    private bool isOpen;

    public AbandonForm() => reason = form.Words("reason", isRequired: true);

    [Parameter, EditorRequired]
    public TreatedLadleView Treated { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    [Inject]
    private AbandonPocket Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    protected override void OnParametersSet() => seen.Arrived(Treated.Version);

    private void Open()
    {
        isOpen = true;
        seen.Open(Treated.Version);
        form.Open();
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, Treated.Id, seen.Value, reason.Value!)));
        if (outcome is null) return;
        if (outcome.IsStale()) seen.Outdated();
        else isOpen = !outcome.Succeeded;
    }
}
