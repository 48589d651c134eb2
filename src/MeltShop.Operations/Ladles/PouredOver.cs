using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Storing;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Ladles;
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
    /// <returns>What stands against it where it is out of use, is prepared or reacts, or where iron is left in it: that would mix with what comes.</returns>
    public static async Task<(TreatedLadle? Opened, Finding? Finding)> PourOver(this Writing writing, PouringLadle from, Ladle vessel, double kg, CancellationToken ct)
    {
        var db = writing.Db;
        await db.LockLadle(vessel.Id, ct);
        if (!await db.Ladles.AnyAsync(l => l.Id == vessel.Id && l.IsActive, ct)) return (null, new Finding("vesselId", "ladle.outOfUse"));
        var earlier = await db.TreatedLadles.Where(l => l.LadleId == vessel.Id)
            .Where(l => l.State == TreatedLadleState.Prepared || l.State == TreatedLadleState.Tapped || l.State == TreatedLadleState.Pouring).ToListAsync(ct);
        if (earlier.Any(l => l.State != TreatedLadleState.Pouring)) return (null, new Finding("vesselId", "ladle.busy"));
        await db.LockLadles(ct, [from.Treated, .. earlier]);
        foreach (var emptied in earlier)
        {
            var mass = await LadleContents.One(db, emptied.Id, ct);
            if (mass.AtLeastKg > 0) return (null, new Finding("vesselId", "ladle.notEmpty", mass.LeftKg));
            writing.Step(emptied, TreatedLadleState.Held);
        }

        var figure = await db.LadleFigures.AsNoTracking().Where(f => f.LadleId == vessel.Id && f.Kind == LadleFigureKind.MgFade).OrderByDescending(f => f.Id).FirstOrDefaultAsync(ct);
        var ordinal = await db.TreatedLadles.Where(l => l.HeatId == from.Treated.HeatId).MaxAsync(l => l.Ordinal, ct) + 1;
        var treated = new TreatedLadle
        {
            HeatId = from.Treated.HeatId, LadleId = vessel.Id, Ordinal = ordinal, State = TreatedLadleState.Prepared, ReactionEndedAt = from.Treated.ReactionEndedAt,
        };
        db.Add(treated);
        await db.SaveChangesAsync(ct);
        db.Add(Card(writing.Stamp, treated.Id, from.Card, vessel, figure, kg));
        db.Add(Tap(writing.Stamp, treated, from));
        writing.Step(treated, TreatedLadleState.Pouring);
        await db.SaveChangesAsync(ct);
        return (treated, null);
    }

    private static Tap Tap(Stamp stamp, TreatedLadle treated, PouringLadle from) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        TreatedLadleId = treated.Id, HeatId = treated.HeatId, Kg = 0, FromTreatedLadleId = from.Treated.Id,
    };

    private static PocketCard Card(Stamp stamp, long treatedLadleId, PocketCard card, Ladle vessel, LadleFigure? fade, double kg) => new()
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
        MgFadeLeastPercentPerMinute = fade?.Least,
        MgFadeMostPercentPerMinute = fade?.Most,
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
