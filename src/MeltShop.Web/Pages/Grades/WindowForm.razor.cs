using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Grades;

/// <summary>Least, aim and most of one quantity; a new quantity where none stands.</summary>
public sealed partial class WindowForm
{
    private readonly EntryForm form = new();
    private readonly SeenVersion seen = new();
    private readonly TextEntry quantity;
    private readonly QuantityEntry least;
    private readonly QuantityEntry aim;
    private readonly QuantityEntry most;
    private readonly QuantityEntry margin;
    private WindowView? opened;

    public WindowForm()
    {
        quantity = form.Words("window.quantity", isRequired: true, WindowRow.Judge);
        least = form.Quantity("window.least", 0, 100);
        aim = form.Quantity("window.aim", 0, 100);
        most = form.Quantity("window.most", 0, 100);
        margin = form.Quantity("window.margin", 0, 100, isRequired: true);
    }

    [Parameter, EditorRequired]
    public GradeView Grade { get; set; } = null!;

    [Parameter, EditorRequired]
    public WindowStage Stage { get; set; }

    /// <summary>The window in force; null for a new quantity.</summary>
    [Parameter]
    public WindowView? Standing { get; set; }

    [Parameter]
    public EventCallback Saved { get; set; }

    [Parameter]
    public EventCallback Left { get; set; }

    /// <summary>The grade is another now: the page has to read again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private ChangeWindow Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private bool IsOutrun => Standing != opened;

    protected override void OnInitialized()
    {
        opened = Standing;
        seen.Open(Grade.Version);
        quantity.Showing(Standing?.Quantity);
        least.Showing(Standing?.Least);
        aim.Showing(Standing?.Aim);
        most.Showing(Standing?.Most);
        margin.Showing(Standing?.Margin ?? 0);
    }

    protected override void OnParametersSet() => seen.Arrived(Grade.Version);

    private static string Shown(double? value) => value is { } number ? NumberText.Show(number) : "–";

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Grade.Id, seen.Value, Stage, quantity.Value!, least.Value, aim.Value, most.Value, margin.Needed)));
        if (outcome is null) return;
        if (outcome.Succeeded) await Saved.InvokeAsync();
        else if (outcome.IsStale()) seen.Outdated();
        await Changed.InvokeAsync();
    }
}
