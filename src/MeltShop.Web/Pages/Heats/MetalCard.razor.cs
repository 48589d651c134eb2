using MeltShop.Operations.Heats;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The ledger of the metal in the furnace, with how far it may be off, and what changes it beside charge and tap.</summary>
public sealed partial class MetalCard
{
    private MetalForm? opened;

    private enum MetalForm
    {
        Dip,
        BackCharge,
        PourBack,
        PigOut,
    }

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public IReadOnlyList<MaterialView> Yard { get; set; } = [];

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    [Inject]
    private ShopSite Site { get; set; } = null!;

    /// <summary>The furnace may hold the iron of another heat by now.</summary>
    private bool IsOver => Heat is { KnownAt: null, Heat.State: HeatState.Closed or HeatState.Cancelled };

    private double PlusMinus => FurnaceLedger.PlusMinusKg(Heat.Ledger);

    private IEnumerable<(FurnaceMetalKind Kind, double Kg)> Sums => Heat.Metal.Where(line => !line.Origin.IsCorrected)
        .GroupBy(line => line.Kind).OrderBy(kind => kind.Key).Select(kind => (kind.Key, kind.Sum(line => line.Kg)));

    private void Open(MetalForm form) => opened = opened == form ? null : form;

    private void Close() => opened = null;
}
