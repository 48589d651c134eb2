using MeltShop.Operations;
using MeltShop.Operations.Ladles;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>The mass that was tapped into a prepared ladle.</summary>
public sealed class TapEntry : TypedEntry<RecordTap.Result>
{
    public TapEntry()
    {
        Kg = Form.Mass("kg", 0, 100_000, isRequired: true);
        Temperature = Form.Temperature("temperatureC", 1100, 1700);
        Seconds = Form.Quantity("tapSeconds", 0, 3600);
    }

    public override string Operation => nameof(RecordTap);

    public QuantityEntry Kg { get; }

    public QuantityEntry Temperature { get; }

    /// <summary>How long the tap took.</summary>
    public QuantityEntry Seconds { get; }

    protected override Task<Outcome<RecordTap.Result>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<RecordTap>()
        .Run(made.By, new(made.Key, made.ObservedAt, Id("treatedLadleId"), Version, Kg.Needed, Temperature.Value, Seconds.Value));
}
