using MeltShop.Operations;
using MeltShop.Operations.Heats;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;

namespace MeltShop.Web.Components.Entries;

/// <summary>Iron that was poured into pig moulds while the heat goes on.</summary>
public sealed class PigEntry : TypedEntry<double>
{
    public PigEntry()
    {
        Kg = Form.Mass("kg", 0.01, ChargeDraft.MostKg, isRequired: true);
        Reason = Form.Words("reason");
    }

    public override string Operation => nameof(PigOut);

    public QuantityEntry Kg { get; }

    public TextEntry Reason { get; }

    protected override Task<Outcome<double>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<PigOut>()
        .Run(made.By, new(made.Key, made.ObservedAt, Id("heatId"), Kg.Needed, Reason.Value));
}
