using MeltShop.Records.Reading.Yard;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Weighing;

/// <summary>From which bins and lots a mass is taken; nothing where nobody said any.</summary>
public sealed partial class FromLots
{
    [Parameter, EditorRequired]
    public IReadOnlyList<LotShare> Lots { get; set; } = [];

    private bool IsAll => Lots.Count == 1;

    private string Words(LotShare share) => share switch
    {
        { Lot: { } lot, Bin: { } bin } => IsAll ? Text["FromBinLot", lot, bin] : Text["FromBinLotKg", lot, MassText.Show(share.Kg), bin],
        { Lot: { } lot } => IsAll ? Text["FromLot", lot] : Text["FromLotKg", lot, MassText.Show(share.Kg)],
        { Bin: { } bin } => IsAll ? Text["FromBin", bin] : Text["FromBinKg", MassText.Show(share.Kg), bin],
        _ => Text["FromNoLot", MassText.Show(share.Kg)],
    };
}
