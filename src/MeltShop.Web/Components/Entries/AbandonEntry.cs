using MeltShop.Operations;
using MeltShop.Operations.Ladles;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>A prepared ladle will not be tapped.</summary>
public sealed class AbandonEntry : TypedEntry<Guid>
{
    public AbandonEntry() => Reason = Form.Words("reason", isRequired: true);

    public override string Operation => nameof(AbandonPocket);

    public TextEntry Reason { get; }

    protected override Task<Outcome<Guid>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<AbandonPocket>()
        .Run(made.By, new(made.Key, made.ObservedAt, Id("treatedLadleId"), Version, Reason.Value!));
}
