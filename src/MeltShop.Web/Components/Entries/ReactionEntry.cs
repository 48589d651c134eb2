using MeltShop.Operations;
using MeltShop.Operations.Ladles;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>The end of the reaction in a ladle: one press.</summary>
public sealed class ReactionEntry : TypedEntry<Guid>
{
    public ReactionEntry() => Minutes = MinutesAgo.Field(Form);

    public override string Operation => nameof(EndReaction);

    /// <summary>For a press that comes after the first mould.</summary>
    public QuantityEntry Minutes { get; }

    protected override Task<Outcome<Guid>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<EndReaction>()
        .Run(made.By, new(made.Key, Minutes.Before(made.ObservedAt), Id("treatedLadleId"), Version));
}
