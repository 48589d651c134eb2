using MeltShop.Operations;
using MeltShop.Operations.Ladles;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>Magnesium for weighed iron in a ladle: metres of wire, or kilograms.</summary>
public sealed class DoseEntry : TypedEntry<Guid>
{
    private const string Weighed = "weighed";

    public DoseEntry() => Amount = Form.Quantity("amount", 0, 10_000, isRequired: true);

    public override string Operation => nameof(DoseMagnesium);

    public QuantityEntry Amount { get; }

    /// <summary>Says that kilograms are given and no wire.</summary>
    public void WeighIt()
    {
        Belongs(Weighed, bool.TrueString);
        Amount.Of(Dimension.Mass);
    }

    protected override void Told()
    {
        if (Said(Weighed) is not null) Amount.Of(Dimension.Mass);
    }

    protected override Task<Outcome<Guid>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<DoseMagnesium>()
        .Run(made.By, new(made.Key, made.ObservedAt, Id("treatedLadleId"), Version, Id("stationId"), Amount.Needed));
}
