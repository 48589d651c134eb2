using MeltShop.Operations;
using MeltShop.Operations.Laboratory;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>No result will come of a coin that was sent.</summary>
public sealed class LostCoinEntry : TypedEntry<long>
{
    public LostCoinEntry() => Reason = Form.Words("reason", isRequired: true);

    public override string Operation => nameof(LoseCoin);

    public TextEntry Reason { get; }

    protected override Task<Outcome<long>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<LoseCoin>()
        .Run(made.By, new(made.Key, made.ObservedAt, Id("coinId"), Reason.Value!) { DraftSubject = Operations.Drafts.DraftSubject.Coin(Id("coinId")) });
}
