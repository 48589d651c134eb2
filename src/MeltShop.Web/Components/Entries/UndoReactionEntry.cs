using MeltShop.Operations;
using MeltShop.Operations.Ladles;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>The reaction had not ended when somebody pressed.</summary>
public sealed class UndoReactionEntry : TypedEntry<Guid>
{
    public UndoReactionEntry() => Reason = Form.Words("reason", isRequired: true);

    public override string Operation => nameof(UndoReaction);

    public TextEntry Reason { get; }

    protected override Task<Outcome<Guid>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<UndoReaction>()
        .Run(made.By, new(made.Key, made.ObservedAt, Id("treatedLadleId"), Version, Reason.Value!));
}
