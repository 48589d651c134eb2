using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What else counts in a plan: prices of nearness, slag and energy, what using up is worth, and rooms.</summary>
public sealed class WishesDraft
{
    /// <summary>Larger than any price or room of this trade: beyond it somebody mistyped.</summary>
    private const double MostPrice = 1e5, MostM3 = 100;

    public WishesDraft(EntryForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        Nearness = form.PerTonne("wishes.nearnessPrice", 0, MostPrice);
        UseUp = form.PerTonne("wishes.useUpBonusPerTonne", 0, MostPrice);
        Slag = form.PerTonne("wishes.slagCostPerTonne", 0, MostPrice);
        Energy = form.Quantity("wishes.energyPricePerKWh", 0, 100);
        Melting = form.PerTonne("wishes.meltingKWhPerTonne", 0, 2000);
        FurnaceM3 = form.Quantity("wishes.furnaceM3", 0, MostM3);
        BucketM3 = form.Quantity("wishes.bucketM3", 0, MostM3);
        Fillings = form.Quantity("wishes.bucketFillings", 1, 100);
    }

    public QuantityEntry Nearness { get; }
    public QuantityEntry UseUp { get; }
    public QuantityEntry Slag { get; }
    public QuantityEntry Energy { get; }
    public QuantityEntry Melting { get; }
    public QuantityEntry FurnaceM3 { get; }
    public QuantityEntry BucketM3 { get; }
    public QuantityEntry Fillings { get; }

    internal IEnumerable<FieldEntry> Fields => [Nearness, UseUp, Slag, Energy, Melting, FurnaceM3, BucketM3, Fillings];

    public ChargeWishes Choice() =>
        new(Nearness.Value, Slag.Value, Energy.Value, Melting.Value, UseUp.Value, FurnaceM3.Value, BucketM3.Value, Fillings.Value);
}
