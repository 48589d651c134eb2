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
        Minutes = MinutesAgo.Field(Form);
    }

    public override string Operation => nameof(WeighIn);

    /// <summary>Its id as text.</summary>
    public TextEntry Material { get; }

    public QuantityEntry Kg { get; }

    /// <summary>As it stands on the bag or the pile.</summary>
    public TextEntry Lot { get; }

    /// <summary>How long ago it was weighed, where it comes late.</summary>
    public QuantityEntry Minutes { get; }

    /// <summary>One material, and nothing to choose.</summary>
    public void Only(long materialId)
    {
        Belongs("materialId", materialId);
        Told();
    }

    /// <summary>A late weight goes where its time says: before the bath was sampled it went in with the charge.</summary>
    private bool? IntoBath => Id("intoBath") != 1 ? false : Minutes.Value is null ? true : null;

    protected override void Told()
    {
        if (Said("materialId") is { } only) Material.Showing(only);
    }

    protected override Task<Outcome<long>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<WeighIn>().Run(made.By, new(
        made.Key, Minutes.Before(made.ObservedAt), Id("heatId"), long.Parse(Material.Value!, NumberStyles.None, CultureInfo.InvariantCulture), Kg.Needed, IntoBath)
    {
        Lot = Lot.Value,
    });
}
