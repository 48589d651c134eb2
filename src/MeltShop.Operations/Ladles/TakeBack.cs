using MeltShop.Operations.Checking;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Yard;
using MeltShop.Records.Keeping;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>An entry at a ladle that can be taken back.</summary>
public enum LadleEntryKind
{
    Mould,
    Rest,
    Inoculation,
}

/// <summary>Says that something entered at a ladle was not so, and why; the entry stays readable. Answers the fact that says it.</summary>
public sealed class TakeBack(Recorder recorder, TimeProvider time) : Operation<TakeBack.Command, long>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, LadleEntryKind Kind, long FactId, string Reason)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Choice("kind", command.Kind);
        fields.Text("reason", command.Reason, 500);
    }

    protected override Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation) => command.Kind switch
    {
        LadleEntryKind.Mould => Take<PouredMould>(writing, command, m => m.TreatedLadleId, m => Copy(writing, command, m), cancellation),
        LadleEntryKind.Rest => Take<LadleRest>(writing, command, r => r.TreatedLadleId, r => Copy(writing, command, r), cancellation),
        _ => Take<LadleInoculation>(writing, command, i => i.TreatedLadleId, i => Copy(writing, command, i), cancellation),
    };

    private static async Task<Written<long>> Take<TFact>(
        Writing writing, Command command, Func<TFact, long> ladleOf, Func<TFact, TFact> withdrawn, CancellationToken cancellation)
        where TFact : Fact, IWithdrawable
    {
        var db = writing.Db;
        var fact = await db.Set<TFact>().AsNoTracking().SingleOrDefaultAsync(f => f.Id == command.FactId, cancellation);
        if (await db.Standing(fact, "factId", cancellation) is { } finding) return Written<long>.Refused(finding);
        if (fact!.IsWithdrawn) return Refuse("factId", "fact.unknown");
        var back = withdrawn(fact);
        db.Add(back);
        if (fact is LadleInoculation inoculation)
        {
            var stock = await db.StockLineOf(inoculation.EntryKey, inoculation.MaterialId, StockKind.Added, cancellation);
            await writing.Replace(stock, stock.MaterialId, stock.Kind, 0, stock.HeatId, stock.ObservedAt, command.Reason, cancellation);
        }

        await db.SaveChangesAsync(cancellation);
        long?[] ladles = [ladleOf(fact), (fact as LadleRest)?.IntoLadleId];
        return Done(back.Id, [.. ladles.OfType<long>().Select(id => new ChangeNotice(ChangeKind.TreatedLadle, id))]);
    }

    private static PouredMould Copy(Writing writing, Command command, PouredMould mould) => new()
    {
        EntryKey = writing.Stamp.EntryKey, PersonId = writing.Stamp.PersonId, ObservedAt = mould.ObservedAt, EnteredAt = writing.Stamp.EnteredAt,
        SupersedesId = mould.Id, Reason = command.Reason, IsWithdrawn = true,
        TreatedLadleId = mould.TreatedLadleId, Label = mould.Label, FirstAt = mould.FirstAt, Kg = mould.Kg, LateFor = mould.LateFor, StopAt = mould.StopAt,
    };

    private static LadleRest Copy(Writing writing, Command command, LadleRest rest) => new()
    {
        EntryKey = writing.Stamp.EntryKey, PersonId = writing.Stamp.PersonId, ObservedAt = rest.ObservedAt, EnteredAt = writing.Stamp.EnteredAt,
        SupersedesId = rest.Id, Reason = command.Reason, IsWithdrawn = true,
        TreatedLadleId = rest.TreatedLadleId, IntoLadleId = rest.IntoLadleId, Kg = rest.Kg, MixedMgPercent = rest.MixedMgPercent, MinutesToFloor = rest.MinutesToFloor,
        MixedMgLeastPercent = rest.MixedMgLeastPercent, MixedMgMostPercent = rest.MixedMgMostPercent, LeastMinutesToFloor = rest.LeastMinutesToFloor,
        CameMgPercent = rest.CameMgPercent, InoculatedAt = rest.InoculatedAt, SampleId = rest.SampleId,
    };

    private static LadleInoculation Copy(Writing writing, Command command, LadleInoculation inoculation) => new()
    {
        EntryKey = writing.Stamp.EntryKey, PersonId = writing.Stamp.PersonId, ObservedAt = inoculation.ObservedAt, EnteredAt = writing.Stamp.EnteredAt,
        SupersedesId = inoculation.Id, Reason = command.Reason, IsWithdrawn = true,
        TreatedLadleId = inoculation.TreatedLadleId, Place = inoculation.Place, MaterialId = inoculation.MaterialId, Kg = inoculation.Kg, Lot = inoculation.Lot,
    };
}
