using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What moves the clock of the inoculation while pouring: inoculant given late.</summary>
public sealed partial class InoculationCard
{
    private InoculationEntry entry = new();
    private long? ladle;

    [Parameter, EditorRequired]
    public LadleView View { get; set; } = null!;

    /// <summary>Not once the castings are released.</summary>
    private bool IsOffered => View.Treated!.State != TreatedLadleState.Released;

    private PouringView Pouring => View.Pouring!;

    private IEnumerable<Choice> Places => Enum.GetValues<InoculationPlace>().Select(place => new Choice(place.ToString(), Text["Place." + place]));

    private IReadOnlyList<LotView>? Lots => View.Inoculants.FirstOrDefault(m => PocketDraft.Text(m.Id) == entry.Material.Value)?.Lots;

    protected override void OnParametersSet()
    {
        if (ladle == View.Treated!.Id) return;
        (entry, ladle) = (new(), View.Treated.Id);
        entry.Belongs("treatedLadleId", View.Treated.Id);
        OfCard();
    }

    private void OfCard()
    {
        if (View.Treated!.Card is { } card) entry.Material.Showing(PocketDraft.Text(card.InoculantMaterialId));
    }

    private void Saved()
    {
        entry.Place.Showing(nameof(InoculationPlace.Stream));
        OfCard();
        entry.Kg.Showing(null);
        entry.Lot.Showing(null);
    }
}
