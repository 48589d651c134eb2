using MeltShop.Records.Reading.Yard;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Weighing;

/// <summary>From which lots a mass is taken; nothing where the yard has none of the material.</summary>
public sealed partial class FromLots
{
    [Parameter, EditorRequired]
    public IReadOnlyList<LotShare> Lots { get; set; } = [];

    private string Words(LotShare share) => share.Lot is { } lot
        ? Lots.Count == 1 ? Text["FromLot", lot] : Text["FromLotKg", lot, MassText.Show(share.Kg)]
        : Text["FromNoLot", MassText.Show(share.Kg)];
}
