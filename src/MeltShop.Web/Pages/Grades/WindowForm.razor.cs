using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
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
        quantity = form.Choice("window.quantity", isRequired: true);
        least = form.Quantity("window.least");
        aim = form.Quantity("window.aim");
        most = form.Quantity("window.most");
        margin = form.Quantity("window.margin", 0, isRequired: true);
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
        Choose();
        least.Showing(Standing?.Least);
        aim.Showing(Standing?.Aim);
        most.Showing(Standing?.Most);
        margin.Showing(Standing?.Margin ?? 0);
    }

    protected override void OnParametersSet() => seen.Arrived(Grade.Version);

    private string Unit => quantity.Value is { } chosen ? QuantityText.Unit(chosen) : "";

    private string MarginUnit => margin.Dimension == Dimension.TemperatureDifference ? margin.Unit.Sign : Unit;

    private string Shown(double? value) => QuantityText.Bound(quantity.Value ?? "", value);

    private void Choose()
    {
        var dimension = QuantityText.Dimension(quantity.Value);
        foreach (var bound in new[] { least, aim, most }) bound.Of(dimension);
        margin.Of(dimension == Dimension.Temperature ? Dimension.TemperatureDifference : dimension);
    }

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
