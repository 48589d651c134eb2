using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;

namespace MeltShop.Records.Tests;

/// <summary>A heat of a foundry with one of everything: a corrected weight, a sample of two burns, a ladle that was treated and held.</summary>
public sealed record HeatStory(Foundry Foundry, Heat Heat, TreatedLadle Ladle, Sample Bath, Sample LastMetal, long WrongWeighingId)
{
    public static async Task<HeatStory> Tell(Foundry foundry, HeatState state = HeatState.Tapping)
    {
        var heat = await foundry.Heat(state);
        var wrong = foundry.Steel.Id;
        await foundry.Write("WeighIn", (db, stamp) =>
        {
            var weighing = stamp.Weighing(heat.Id, foundry.Steel.Id, 540);
            db.Weighings.Add(weighing);
            db.SaveChanges();
            wrong = weighing.Id;
        });
        await foundry.Write("CorrectWeight", (db, stamp) => db.Weighings.Add(stamp.Weighing(heat.Id, foundry.Steel.Id, 450, supersedes: wrong)));
        await foundry.Write("RecordTemperature", (db, stamp) => db.Temperatures.Add(stamp.Temperature(heat.Id, 1478)));
        Sample bath = null!, lastMetal = null!;
        await foundry.Write("RecordSample", (db, stamp) => db.Samples.Add(bath = stamp.Sample(heat.Id, null, SampleKind.Bath, 3.61, 3.65)));
        TreatedLadle ladle = null!;
        await foundry.Write("PreparePocket", (db, stamp) =>
        {
            ladle = new TreatedLadle { HeatId = heat.Id, LadleId = foundry.Ladle.Id, Ordinal = 1, State = TreatedLadleState.Prepared };
            db.TreatedLadles.Add(ladle);
            db.SaveChanges();
            db.PocketCards.Add(stamp.Card(ladle.Id, foundry.Steel.Id));
        });
        await foundry.Write("RecordTap", (db, stamp) => db.Taps.Add(stamp.Tap(ladle.Id, heat.Id, 995)));
        await foundry.Write("RecordSample", (db, stamp) => db.Samples.Add(lastMetal = stamp.Sample(heat.Id, ladle.Id, SampleKind.LastMetal, 3.5)));
        await foundry.Write("DecideCastings", (db, stamp) =>
        {
            var row = db.TreatedLadles.Single(l => l.Id == ladle.Id);
            db.Expect(row, ladle.Version);
            row.State = TreatedLadleState.Held;
            db.CastingDecisions.Add(stamp.Decision(ladle.Id, CastingVerdict.Hold, lastMetal.Id));
        });
        return new(foundry, heat, ladle, bath, lastMetal, wrong);
    }
}
