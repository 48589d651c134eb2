using MeltShop.Operations;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>A coin is on its way to the laboratory.</summary>
public sealed class CoinEntry : TypedEntry<long>
{
    public CoinEntry()
    {
        Number = Form.Words("coinNumber", isRequired: true);
        Kind = Form.Choice("kind", isRequired: true).Showing(nameof(SampleKind.Bath));
        Remarks = Form.Words("remarks");
        Minutes = MinutesAgo.Field(Form);
    }

    public override string Operation => nameof(SendCoin);

    public TextEntry Number { get; }

    public TextEntry Kind { get; }

    public TextEntry Remarks { get; }

    public QuantityEntry Minutes { get; }

    protected override Task<Outcome<long>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<SendCoin>().Run(made.By, new(
        made.Key, Minutes.Before(made.ObservedAt), Id("heatId"), About.ContainsKey("treatedLadleId") ? Id("treatedLadleId") : null, Enum.TryParse<SampleKind>(Kind.Value, out var kind) ? kind : (SampleKind)(-1), Number.Value!, Remarks.Value));
}
