using System.Globalization;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Charging;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Charge;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Which furnace, which grade, how much, and what is in the furnace already.</summary>
public sealed partial class ChargeBasics
{
    [Parameter, EditorRequired]
    public ChargeView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    /// <summary>What stands in the address has changed.</summary>
    [Parameter]
    public EventCallback Moved { get; set; }

    /// <summary>Anything has changed.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    private IEnumerable<Choice> Furnaces => View.Furnaces.Select(furnace => new Choice(
        furnace.Code, furnace.HeatNumber is { } number ? Text["FurnaceBusy", furnace.Name, number] : furnace.Name));

    private IEnumerable<Choice> Grades => View.Grades.Select(grade => new Choice(grade.Code, grade.Code));

    private string? Capacity => Draft.FurnaceIn(View) is { } furnace ? Text["Capacity", MassText.Show(furnace.CapacityKg)].Value : null;

    private IReadOnlyCollection<string> Counting =>
        [.. Draft.GradeIn(View)?.At(WindowStage.Furnace).Select(window => window.Quantity) ?? []];

    private IEnumerable<Choice> Targets => Enum.GetNames<ChargeTarget>().Select(target => new Choice(target, Text["Target." + target]));

    private IEnumerable<Choice> Ladles => View.Ladles.Select(ladle => new Choice(ladle.Id.ToString(CultureInfo.InvariantCulture), ladle.Name));

    private bool IsTreated => Draft.GradeIn(View)?.Family is IronFamily.Ductile;

    /// <summary>The way that the window goes; of treated iron also which cover steel it goes with, or that it goes without.</summary>
    private string TargetWords => !Draft.IsPoured ? Text["TargetHelp"]
        : !IsTreated ? Text["TargetPouredHelp"]
        : Draft.GradeIn(View)?.Recipe is { CoverCode: { } code, CoverRatePercent: { } rate } ? Text["TargetPouredCovered", UnitText.Percent(NumberText.Show(rate)), Named(code)]
        : Text["TargetPouredUncovered", UnitText.Percent(NumberText.Show(TreatmentCover.CarbonTakenPercent))];

    /// <summary>The only ladle there is need not be chosen; it is put into the field, where it can be seen.</summary>
    private Task TargetChosen()
    {
        if (Draft.IsPoured && Draft.Ladle.Value is null && View.Ladles is [{ } only]) Draft.Ladle.Showing(only.Id.ToString(CultureInfo.InvariantCulture));
        return Changed.InvokeAsync();
    }

    private string Named(string code) => View.RouteMaterials.FirstOrDefault(material => material.Code == code)?.Name ?? code;

    private async Task FurnaceChosen()
    {
        if (Draft.FurnaceIn(View) is { } furnace) Draft.OfferAFullFurnace(furnace);
        await Chosen();
    }

    private async Task Chosen()
    {
        await Moved.InvokeAsync();
        await Changed.InvokeAsync();
    }
}
