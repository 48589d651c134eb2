using MeltShop.Operations;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>Takes something out of use, or into use again: one press, which can be taken back by another.</summary>
public sealed partial class UseSwitch
{
    private readonly EntryForm form = new();
    private readonly Drawn<bool> turn;

    public UseSwitch() => turn = new(Save);

    [Parameter, EditorRequired]
    public bool IsActive { get; set; }

    /// <summary>Says that it is in use from now on, or is not.</summary>
    [Parameter, EditorRequired]
    public Func<EntryMade, bool, Task<Outcome<Guid>>> Say { get; set; } = null!;

    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private async Task Save(bool wasActive)
    {
        if (wasActive != IsActive) return; // pressed once more before the answer was shown
        var outcome = await HandingIn.Send(form, made => Say(made, !wasActive));
        if (outcome?.Succeeded == true || outcome?.IsStale() == true) await Changed.InvokeAsync();
        if (outcome?.Succeeded == true) form.Open();
    }
}
