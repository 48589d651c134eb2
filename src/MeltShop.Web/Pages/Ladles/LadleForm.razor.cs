using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Records.Sites;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Takes a ladle or a treatment station into the shop; its other figures are said afterwards.</summary>
public sealed partial class LadleForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry code, name, process, source;
    private readonly QuantityEntry fill, pocket, recovery, fade, loss;
    private bool isOpen;

    public LadleForm()
    {
        code = form.Words("code", isRequired: true);
        name = form.Words("name", isRequired: true);
        process = form.Choice("process", isRequired: true);
        fill = form.Mass("fillLimitKg", 0, 100_000, isRequired: true);
        pocket = form.Mass("pocketKg", 0, 5000, isRequired: true);
        recovery = form.Quantity("mgRecoveryPercent", 0, 100, isRequired: true);
        fade = form.Quantity("mgFadePercentPerMinute", 0, 0.01, isRequired: true);
        loss = form.Quantity("heatLossKPerMinute", 0, 50, isRequired: true).Of(Dimension.TemperatureDifference);
        source = form.Words("figuresSource", isRequired: true);
    }

    [Parameter]
    public EventCallback Added { get; set; }

    [Inject]
    private AddLadle Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Processes => LadleProcess.All.Keys.Concat(PouringVessel.All).Select(key => new Choice(key, Text["Process." + key]));

    /// <summary>A pouring furnace or a trough: nothing is treated in it.</summary>
    private bool IsVessel => process.Value is { } key && PouringVessel.Is(key);

    /// <summary>What is printed for the process that was chosen.</summary>
    private string? Printed => process.Value is { } key && LadleProcess.Of(key) is { } chosen
        ? Text["RecoveryPrinted", NumberText.Show(chosen.RecoveryLeast), NumberText.Show(chosen.RecoveryMost)].Value : null;

    // It has no pocket and recovers nothing: nought is the truth of it, and nothing to ask for.
    private void Chosen()
    {
        pocket.Showing(IsVessel ? 0 : null);
        recovery.Showing(IsVessel ? 0 : null);
    }

    private void Open()
    {
        isOpen = true;
        form.Open();
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, code.Value!, name.Value!, process.Value!, fill.Needed, pocket.Needed, recovery.Needed, null, fade.Needed, loss.Needed,
            source.Value!)));
        if (outcome?.Succeeded != true) return;
        isOpen = false;
        await Added.InvokeAsync();
    }
}
