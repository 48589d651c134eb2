using MeltShop.Operations;
using MeltShop.Operations.Ladles;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>A mould that was poured: one press where the next one is like the last.</summary>
public sealed class MouldEntry : TypedEntry<RecordMould.Result>
{
    public MouldEntry()
    {
        Label = Form.Words("label", isRequired: true);
        Kg = Form.Mass("kg", 0, 100_000, isRequired: true);
        Seconds = Form.Quantity("pourSeconds", 0, 3600, isRequired: true);
        Minutes = MinutesAgo.Field(Form);
    }

    public override string Operation => nameof(RecordMould);

    public TextEntry Label { get; }

    public QuantityEntry Kg { get; }

    public QuantityEntry Seconds { get; }

    public QuantityEntry Minutes { get; }

    protected override Task<Outcome<RecordMould.Result>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<RecordMould>()
        .Run(made.By, new(made.Key, Minutes.Before(made.ObservedAt), Id("treatedLadleId"), Label.Value!, Kg.Needed, Seconds.Needed));
}
