using MeltShop.Operations;
using MeltShop.Operations.Heats;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;

namespace MeltShop.Web.Components.Entries;

/// <summary>A dipped level of a furnace, or what its load cell said.</summary>
public sealed class DipEntry : TypedEntry<double>
{
    public DipEntry()
    {
        Kg = Form.Mass("kg", 0, ChargeDraft.MostKg, isRequired: true);
        PlusMinus = Form.Mass("plusMinusKg", 0, ChargeDraft.MostKg);
        Reason = Form.Words("reason", isRequired: true);
    }

    public override string Operation => nameof(DipFurnace);

    public QuantityEntry Kg { get; }

    /// <summary>How far it may be off.</summary>
    public QuantityEntry PlusMinus { get; }

    /// <summary>How it was measured.</summary>
    public TextEntry Reason { get; }

    protected override Task<Outcome<double>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<DipFurnace>()
        .Run(made.By, new(made.Key, made.ObservedAt, Id("furnaceId"), Kg.Needed, null, Reason.Value!, PlusMinus.Value));
}
