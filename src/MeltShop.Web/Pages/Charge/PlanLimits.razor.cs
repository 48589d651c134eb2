using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Route;
using MeltShop.Operations.Charging;
using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Where the plan sits on each limit, how far it scatters and what the limit costs; each can be changed for this charge.</summary>
public sealed partial class PlanLimits
{
    private readonly TextEntry other = new EntryForm().Choice("otherLimit");
    private string? open;

    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;

    /// <summary>What the target asks.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<TargetRow> Rows { get; set; } = [];

    /// <summary>The chosen grade; null before one is chosen.</summary>
    [Parameter, EditorRequired]
    public GradeView? Grade { get; set; }

    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    /// <summary>With scatter and costs, for the metallurgist.</summary>
    [Parameter]
    public bool IsWhyShown { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    private IReadOnlyList<Formula> Formulas => [.. QuantityFormulas.Of(Rows.Select(row => row.Name)), .. Rows.Any(row => row.IsPoured) ? [FurnaceWindow.Formula] : Array.Empty<Formula>()];

    private static void Redraw()
    {
        // The fields of what was chosen stand here, and are drawn after the callback.
    }

    private void Turn(string quantity) => open = open == quantity ? null : quantity;

    /// <summary>What the yard brings and the target does not limit: it can be limited for this charge alone.</summary>
    private IEnumerable<Choice> Others =>
    [
        .. WindowQuantity.Derived.Where(quantity => RowOf(quantity.Name) is null && (Offered.Contains(quantity.Name) || Draft.Limit(quantity.Name).IsChanged))
            .Select(quantity => new Choice(quantity.Name, Text[AddedLimits.IsOfThePoured(quantity.Name) ? "OfThePoured" : "OfTheFurnace", QuantityText.Name(LimitText, quantity.Name)])),
        .. Planned.Problem.Materials.SelectMany(material => material.Composition.Analysis.Select(percent => percent.Key)).Distinct().Order()
            .Select(element => element.Symbol).Where(name => RowOf(name) is null).Select(name => new Choice(name, name)),
    ];

    private HashSet<string> Offered =>
        Grade is { } grade ? [.. AddedLimits.Derived(grade, Draft.IsPoured ? ChargeTarget.Poured : ChargeTarget.Furnace).Select(quantity => quantity.Name)] : [];

    /// <summary>Each quantity once, with where the plan sits on it where there is a plan.</summary>
    private IEnumerable<(string Name, LimitRow? Row, IReadOnlyList<QuantityLimit> Limits)> Limits => Planned.IsReached
        ? LimitRow.Of(Planned, Rows).Select(row => (row.Quantity, (LimitRow?)row, (IReadOnlyList<QuantityLimit>)[]))
        : Planned.Problem.Limits.GroupBy(limit => limit.Quantity.Name).Select(same => (same.Key, (LimitRow?)null, (IReadOnlyList<QuantityLimit>)[.. same]));

    private bool Clashes(string quantity) => Planned.Plan.Conflicts.Any(clash => clash.Quantity == quantity);

    private TargetRow? RowOf(string quantity) => Rows.FirstOrDefault(row => row.Name == quantity && !row.IsAdded);

    private string Words(LimitRow row) => string.Join(" ", new[]
    {
        row.Row is { IsCountedPoured: true } ? Text["InPoured"].Value : null,
        row.Row is { IsPoured: true, IsCountedPoured: false, Window: { } window } ? Text["FromPoured", Bounds(row.Quantity, window.Least, window.Most)].Value : null,
        row.Row is { IsPoured: true, Window: null } ? Text["FromRoute"].Value : null,
        ScatterText.Of(row.Outcome, Text),
        IsWhyShown && row.Outcome.StandardDeviation == 0 ? Text["NoScatter"].Value : null,
        IsWhyShown && Planned.ByHand is null ? Binding(row) : null,
    }.OfType<string>());

    private string Binding(LimitRow row) => row.Outcome.Binding is BindingBound.None
        ? Text["BindsNot"]
        : $"{Text["Binds." + row.Outcome.Binding, QuantityText.Difference(row.Quantity, row.Margin)]} {LimitCostText.Of(row.Outcome, Planned.Plan.LiquidKg - Planned.Problem.Heel.Kg, Currency, Text)}";

    /// <summary>Of a quantity; a curved one has a row for each bound.</summary>
    private string Asked(string quantity, IReadOnlyList<QuantityLimit> limits)
    {
        double? Told(double? row) => row is { } number ? WindowQuantity.Told(quantity, number) : null;
        var held = limits.Max(limit => limit.HeldMargin);
        var margin = held + limits.Max(limit => limit.Margin);
        return string.Join(" · ", new[]
        {
            Bounds(quantity, Told(limits.Max(limit => limit.Min)) - held, Told(limits.Min(limit => limit.Max)) + held),
            margin > 0 ? $"{Text["Margin"]} {QuantityText.Difference(quantity, margin)}" : null,
        }.OfType<string>());
    }

    /// <summary>A bound on a trace has as many decimals as it takes not to be told as none.</summary>
    private string Bounds(string quantity, double? least, double? most) => string.Join(" · ", new[]
    {
        least is { } low ? $"{Text["Least"]} {QuantityText.Show(quantity, low, 0)}" : null,
        most is { } high ? $"{Text["Most"]} {QuantityText.Show(quantity, high, 0)}" : null,
    }.OfType<string>());
}
