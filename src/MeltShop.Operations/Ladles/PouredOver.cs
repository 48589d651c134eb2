using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Storing;
using MeltShop.Records.Ladles;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>
/// Opens a filling of an empty ladle, a pouring furnace or a trough that is filled from a ladle: from then on it has its own clocks,
/// moulds, samples and decision. Its card is the other ladle's, without alloy, and with its own fade and limits.
/// </summary>
internal static class PouredOver
{
    /// <returns>Null where it is prepared or reacts: then nothing may be poured into it.</returns>
    public static async Task<TreatedLadle?> PourOver(this Writing writing, PouringLadle from, Ladle vessel, double kg, CancellationToken ct)
    {
        var db = writing.Db;
        var earlier = await db.TreatedLadles.Where(l => l.LadleId == vessel.Id)
            .Where(l => l.State == TreatedLadleState.Prepared || l.State == TreatedLadleState.Tapped || l.State == TreatedLadleState.Pouring).ToListAsync(ct);
        if (earlier.Any(l => l.State != TreatedLadleState.Pouring)) return null;
        foreach (var emptied in earlier) writing.Step(emptied, TreatedLadleState.Held);
        var ordinal = await db.TreatedLadles.Where(l => l.HeatId == from.Treated.HeatId).MaxAsync(l => l.Ordinal, ct) + 1;
        var treated = new TreatedLadle
        {
            HeatId = from.Treated.HeatId, LadleId = vessel.Id, Ordinal = ordinal, State = TreatedLadleState.Prepared, ReactionEndedAt = from.Treated.ReactionEndedAt,
        };
        db.Add(treated);
        await db.SaveChangesAsync(ct);
        db.Add(Card(writing.Stamp, treated.Id, from.Card, vessel, kg));
        db.Add(Tap(writing.Stamp, treated, from));
        writing.Step(treated, TreatedLadleState.Pouring);
        await db.SaveChangesAsync(ct);
        return treated;
    }

    private static Tap Tap(Stamp stamp, TreatedLadle treated, PouringLadle from) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        TreatedLadleId = treated.Id, HeatId = treated.HeatId, Kg = 0, FromTreatedLadleId = from.Treated.Id,
    };

    private static PocketCard Card(Stamp stamp, long treatedLadleId, PocketCard card, Ladle vessel, double kg) => new()
    {
        EntryKey = stamp.EntryKey,
        PersonId = stamp.PersonId,
        ObservedAt = stamp.ObservedAt,
        EnteredAt = stamp.EnteredAt,
        TreatedLadleId = treatedLadleId,
        PlannedKg = kg,
        TemperatureC = card.TemperatureC,
        BaseSulphurPercent = card.BaseSulphurPercent,
        TargetMgPercent = card.TargetMgPercent,
        MgFloorPercent = card.MgFloorPercent,
        InoculantMaterialId = card.InoculantMaterialId,
        InoculantKg = 0,
        StopWeightKg = vessel.FillLimitKg,
        Problem = Faded(card, vessel),
        Versions = card.Versions,
        HeatLossKPerMinute = vessel.HeatLossKPerMinute,
        LeastPouringC = vessel.LeastPouringC ?? card.LeastPouringC,
        InoculationMinutes = vessel.InoculationMinutes ?? card.InoculationMinutes,
        HouseMinutes = vessel.HouseMinutes,
    };

    private static string? Faded(PocketCard card, Ladle vessel)
    {
        if (card.Problem is not { } stored) return null;
        var problem = StoredJson.Value<TreatmentProblem>(stored);
        return StoredJson.Text(problem with { Recipe = problem.Recipe with { Fade = new Fade.Linear(vessel.MgFadePercentPerMinute) } });
    }
}
