using MeltShop.Operations;
using MeltShop.Operations.Ladles;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>Something entered at a ladle was not so.</summary>
public sealed class TakeBackEntry : TypedEntry<long>
{
    public TakeBackEntry() => Reason = Form.Words("reason", isRequired: true);

    public override string Operation => nameof(TakeBack);

    public TextEntry Reason { get; }

    protected override Task<Outcome<long>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<TakeBack>().Run(made.By, new(
        made.Key, made.ObservedAt, Enum.TryParse<LadleEntryKind>(About.GetValueOrDefault("kind"), out var kind) ? kind : (LadleEntryKind)(-1), Id("factId"), Reason.Value!));
}
