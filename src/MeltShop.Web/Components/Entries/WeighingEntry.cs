using System.Globalization;
using MeltShop.Operations;
using MeltShop.Operations.Heats;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>A mass that went into the furnace, or into the bath.</summary>
public sealed class WeighingEntry : TypedEntry<long>
{
    /// <summary>A scale of a yard shows no less, and no furnace takes more, kg.</summary>
    private const double LeastKg = 0.01, MostKg = 100_000;

    public WeighingEntry()
    {
        Material = Form.Choice("materialId", isRequired: true);
        Kg = Form.Mass("kg", LeastKg, MostKg, isRequired: true);
        Lot = Form.Words("lot");
    }

    public override string Operation => nameof(WeighIn);

    /// <summary>Its id as text.</summary>
    public TextEntry Material { get; }

    public QuantityEntry Kg { get; }

    /// <summary>As it stands on the bag or the pile.</summary>
    public TextEntry Lot { get; }

    /// <summary>One material, and nothing to choose.</summary>
    public void Only(long materialId)
    {
        Belongs("materialId", materialId);
        Told();
    }

    protected override void Told()
    {
        if (Said("materialId") is { } only) Material.Showing(only);
    }

    protected override Task<Outcome<long>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<WeighIn>().Run(made.By, new(
        made.Key, made.ObservedAt, Id("heatId"), long.Parse(Material.Value!, NumberStyles.None, CultureInfo.InvariantCulture), Kg.Needed, Id("intoBath") == 1)
    {
        Lot = Lot.Value,
    });
}
