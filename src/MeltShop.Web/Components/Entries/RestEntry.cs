using System.Globalization;
using MeltShop.Operations;
using MeltShop.Operations.Ladles;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>What was left in a ladle, and where it went.</summary>
public sealed class RestEntry : TypedEntry<double>
{
    public RestEntry()
    {
        Way = Form.Choice("way", isRequired: true).Showing(nameof(RestWay.Pigged));
        HeatId = Form.Choice("heatId");
        IntoLadle = Form.Choice("intoLadleId");
        Vessel = Form.Choice("vesselId");
        Kg = Form.Mass("kg", 0, 100_000, isRequired: true);
        Reason = Form.Words("reason");
    }

    public override string Operation => nameof(RecordRest);

    public TextEntry Way { get; }

    /// <summary>The heat in whose furnace it went.</summary>
    public TextEntry HeatId { get; }

    public TextEntry IntoLadle { get; }

    /// <summary>The empty ladle, pouring furnace or trough.</summary>
    public TextEntry Vessel { get; }

    public QuantityEntry Kg { get; }

    public TextEntry Reason { get; }

    public RestWay? Chosen => Enum.TryParse<RestWay>(Way.Value, out var way) ? way : null;

    protected override Task<Outcome<double>> Run(IServiceProvider services, EntryMade made)
    {
        var into = Chosen switch { RestWay.PouredBack => HeatId.Value, RestWay.IntoLadle => IntoLadle.Value, RestWay.IntoEmpty => Vessel.Value, _ => null };
        return services.GetRequiredService<RecordRest>().Run(made.By, new(
            made.Key, made.ObservedAt, Id("treatedLadleId"), Chosen ?? (RestWay)(-1), into is null ? null : long.Parse(into, CultureInfo.InvariantCulture), Kg.Needed,
            Reason.Value));
    }
}
