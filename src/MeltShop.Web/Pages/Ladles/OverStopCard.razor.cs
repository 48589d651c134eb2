using MeltShop.Operations.Ladles;
using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Tapped over the stop weight: what now. Alloy into the pocket is no choice.</summary>
public sealed partial class OverStopCard
{
    [Parameter, EditorRequired]
    public LadleView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }

    private TreatedLadleView Treated => View.Treated!;

    private PocketCardView Card => Treated.Card!;

    private TapView Tap => Treated.Tap!;

    private double Over => Treated is { Card: { } card, Tap: { } tap } ? tap.Kg - card.StopWeightKg : 0;

    private LadleEquipment? Station => WireStation.Of(View);

    private DoseAnswer? Wire => Station is { } station ? DoseQuestion.For(Card, View.Pouring!.Times, Tap.Kg + View.Pouring.CameKg - View.Pouring.OutKg, station, Now) : null;
}
