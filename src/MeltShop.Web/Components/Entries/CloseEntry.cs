using MeltShop.Operations;
using MeltShop.Operations.Heats;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;

namespace MeltShop.Web.Components.Entries;

/// <summary>The heat is over; what was pigged, the rest stays as a heel.</summary>
public sealed class CloseEntry : TypedEntry<CloseHeat.Result>
{
    public CloseEntry() => Pigged = Form.Mass("piggedKg", 0, ChargeDraft.MostKg, isRequired: true);

    public override string Operation => nameof(CloseHeat);

    public QuantityEntry Pigged { get; }

    protected override Task<Outcome<CloseHeat.Result>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<CloseHeat>()
        .Run(made.By, new(made.Key, made.ObservedAt, Id("heatId"), Version, Pigged.Needed));
}
