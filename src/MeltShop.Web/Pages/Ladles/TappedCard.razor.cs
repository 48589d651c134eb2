using MeltShop.Operations.Ladles;
using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>After the tap: magnesium on the weighed mass where none lay in a pocket; then the end of the reaction.</summary>
public sealed partial class TappedCard
{
    [Parameter, EditorRequired]
    public LadleView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }

    private TreatedLadleView Treated => View.Treated!;

    private bool IsUndosed => Treated.Card is { AlloyKg: null, MgFloorPercent: not null } && View.Pouring!.Doses.All(dose => dose.Origin.IsCorrected)
        && Treated.Card.Process != Records.Reading.Ladles.LadleTimesRows.InMould;

    private LadleEquipment? Station => View.Ladles.FirstOrDefault(l => l.Id == Treated.LadleId);

    private DoseAnswer? Dose => Station is { } station ? DoseQuestion.For(Treated.Card!, View.Pouring!.Times, Treated.Tap!.Kg, station, Now) : null;
}
