using System.Globalization;
using MeltShop.Operations;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Ladles;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>An inoculation after that of the card.</summary>
public sealed class InoculationEntry : TypedEntry<long>
{
    public InoculationEntry()
    {
        Place = Form.Choice("place", isRequired: true).Showing(nameof(InoculationPlace.Stream));
        Material = Form.Choice("materialId", isRequired: true);
        Kg = Form.Mass("kg", 0, 1000, isRequired: true);
        Lot = Form.Words("lot");
    }

    public override string Operation => nameof(RecordInoculation);

    public TextEntry Place { get; }

    /// <summary>Its id as text.</summary>
    public TextEntry Material { get; }

    public QuantityEntry Kg { get; }

    /// <summary>As it stands on the bag.</summary>
    public TextEntry Lot { get; }

    protected override Task<Outcome<long>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<RecordInoculation>().Run(made.By, new(
        made.Key, made.ObservedAt, Id("treatedLadleId"), Enum.TryParse<InoculationPlace>(Place.Value, out var place) ? place : (InoculationPlace)(-1),
        long.Parse(Material.Value!, NumberStyles.None, CultureInfo.InvariantCulture), Kg.Needed, Lot.Value));
}
