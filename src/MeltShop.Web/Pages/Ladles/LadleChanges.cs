using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Writing;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Which changes alter what is shown of one ladle: on a busy shift most are of other heats and other ladles.</summary>
internal static class LadleChanges
{
    /// <summary>
    /// Its own heat, furnace, filling and materials, and a material that has become another one, said with its version: it may be one to offer
    /// now. Of a sample nobody knows whose it is before it is read. A doubt travels with iron from ladle to ladle, so one that took some hears of all.
    /// </summary>
    public static bool Concern(LadleView? shown, ChangeNotice change) => shown is not { Treated: { } treated } || shown.Pouring is { Came.Count: > 0 }
        ? change.IsOfHeats
        : change.Kind switch
        {
            ChangeKind.Heat => change.Id == shown.Heat.Id,
            ChangeKind.Furnace => change.Id == shown.Heat.FurnaceId,
            ChangeKind.TreatedLadle => change.Id == treated.Id,
            ChangeKind.Material => change.Version is not null || shown.Alloys.Concat(shown.Inoculants).Concat(shown.Covers).Concat(shown.PearliteFormers).Any(m => m.Id == change.Id),
            _ => change.IsOfHeats,
        };

    /// <summary>What is left in it may go into any other ladle and back into any furnace: where they stand is offered with it.</summary>
    public static bool HasRest(LadleView shown) => shown is { Treated: { Tap: not null, State: not TreatedLadleState.Released }, IsEmptied: false };
}
