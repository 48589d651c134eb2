using MeltShop.Charging.Plans;
using MeltShop.Records.Reading.Charge;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What goes in and why, and what stays out and why; each can be changed for this charge.</summary>
public sealed partial class PlanMaterials
{
    /// <summary>As many of what stays out as one reads; the others are a press away.</summary>
    private const int Few = 6;

    /// <summary>Prices that are nearer to each other than this are one price.</summary>
    private const double Cent = 0.01;

    private bool isAllShown;

    [Parameter, EditorRequired]
    public ChargeView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;

    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    /// <summary>With costs and reasons, for the metallurgist.</summary>
    [Parameter]
    public bool IsWhyShown { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    private IReadOnlyList<MaterialRow> Rows { get; set; } = [];

    private IReadOnlyList<MaterialRow> InPlan => [.. Rows.Where(row => row.Standing is MaterialStanding.InPlan)];

    private IEnumerable<MaterialRow> Out => Rows.Where(row => row.Standing is not MaterialStanding.InPlan);

    /// <summary>What was changed, is open or has to be put right in the yard is never hidden.</summary>
    private IEnumerable<MaterialRow> Others => Out.Where((row, place) =>
        isAllShown || place < Few || row.IsUnsaid || row.Material.Code == Open || Draft.Material(row.Material.Code).IsChanged);

    private int Hidden => Out.Count() - Others.Count();

    private string? Open { get; set; }

    protected override void OnParametersSet() => Rows = MaterialRow.Of(View, Planned, Draft);

    private void Turn(MaterialRow row) => Open = Open == row.Material.Code ? null : row.Material.Code;

    private void ShowAll() => isAllShown = true;

    private string Why(MaterialRow row) => row.Standing switch
    {
        MaterialStanding.InPlan => string.Join(" · ", new[]
        {
            Text["OfTheMelt", ShareText.Show(row.LiquidPercent)].Value,
            row.Supplies.Count > 0 ? Text["Supplies", Named(row.Supplies)].Value : row.IsIron && row.Burdens.Count == 0 ? Text["Dilutes"].Value : null,
            row.Burdens.Count > 0 ? Text["Burdens", Named(row.Burdens)].Value : null,
            Stays(row),
        }.OfType<string>().Concat(Holds(row))),
        MaterialStanding.LeftOut => Text["LeftOut"],
        MaterialStanding.NoneThere => Text["NoneThere"],
        MaterialStanding.BinLeftOut => Text["BinLeftOut"],
        MaterialStanding.NoAnalysis => Text["NoAnalysis"],
        MaterialStanding.NoYield => Text["NoYield"],
        MaterialStanding.NoMgRecovery => Text["NoMgRecovery"],
        _ when !IsWhyShown => "",
        _ when !Planned.IsReached => Text["NoPlan"],
        _ when row.PriceToEnter is not { } price => Text[HasPieces ? "WholePieces" : "NeverIn"],
        _ when row.PriceToEnter >= row.Price => Text["EquallyGood"],
        _ when row.KeptOutBy.Count == 0 => Text["ComesInAt", PriceText.Number(row.PriceToEnter!.Value), PriceText.Unit(Currency)],
        _ => $"{Text["ComesInAt", PriceText.Number(row.PriceToEnter!.Value), PriceText.Unit(Currency)]} · {Text["KeptOutBy", Pressures(row)]}",
    };

    private IEnumerable<string> Holds(MaterialRow row) => BoundText.Of(
        Planned.Plan, Planned.Problem.Heel.Kg, row.Material.Code, [MissKind.Stock, MissKind.MaterialKg, MissKind.MaterialPercent], Currency, Text);

    private string Pressures(MaterialRow row) =>
        string.Join(", ", row.KeptOutBy.Select(pressure => $"{QuantityText.Name(LimitText, pressure.Quantity)} {PriceText.Show(pressure.PerTonne, Currency, 0)}"));

    /// <summary>One material in pieces is enough: then no material of the plan has a price that could be said.</summary>
    private bool HasPieces => Planned.Problem.Materials.Any(material => material.PieceKg is not null);

    /// <summary>With whole pieces there is no range; under confidence a mix may follow every change of a price, so that its range is a point.</summary>
    private string? Stays(MaterialRow row) => row.Range switch
    {
        null => Text[HasPieces ? "StaysPieces" : "StaysUnknown"].Value,
        { Least: null, Most: null } => Text["StaysAlways"].Value,
        { Least: { } least, Most: { } most } when most - least < Cent => Text["StaysNowhere"].Value,
        { Least: { } least, Most: { } most } => Text["Stays", PriceText.Number(least), PriceText.Number(most), PriceText.Unit(Currency)].Value,
        { Most: { } most } => Text["StaysBelow", PriceText.Number(most), PriceText.Unit(Currency)].Value,
        { Least: { } least } => Text["StaysAbove", PriceText.Number(least), PriceText.Unit(Currency)].Value,
    };

    private static string Named(IEnumerable<Supply> supplies) =>
        string.Join(", ", supplies.Select(supply => $"{supply.Element.Symbol} {ShareText.Show(supply.SharePercent)}"));
}
