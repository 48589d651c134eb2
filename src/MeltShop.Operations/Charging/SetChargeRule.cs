using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Charging;

/// <summary>Says what the shop reckons with in every charge. The room of a furnace is kept at the furnace.</summary>
public sealed class SetChargeRule(Recorder recorder, TimeProvider time) : Operation<SetChargeRule.Command, long>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, ChargeWishes Wishes) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist, Role.Administrator];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Check(command.Wishes);
        fields.CheckWhole(command.Wishes);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var (stamp, wishes) = (writing.Stamp, command.Wishes);
        var rule = new ChargeRule
        {
            EntryKey = stamp.EntryKey,
            PersonId = stamp.PersonId,
            ObservedAt = stamp.ObservedAt,
            EnteredAt = stamp.EnteredAt,
            NearnessPrice = wishes.NearnessPrice,
            SlagCostPerTonne = wishes.SlagCostPerTonne,
            EnergyPricePerKWh = wishes.EnergyPricePerKWh,
            MeltingKWhPerTonne = wishes.MeltingKWhPerTonne,
            UseUpBonusPerTonne = wishes.UseUpBonusPerTonne,
            BucketM3 = wishes.BucketM3,
            BucketFillings = wishes.BucketFillings,
        };
        writing.Db.Add(rule);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(rule.Id, new ChangeNotice(ChangeKind.Site, rule.Id));
    }
}
