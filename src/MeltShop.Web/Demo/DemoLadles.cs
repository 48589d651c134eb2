using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Laboratory;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Demo;

/// <summary>
/// The ladles of the finished heat with their moulds: three released, the third by its test piece and with a certificate; the last
/// one held, for its last mould came late and its magnesium had faded too far.
/// </summary>
internal sealed class DemoLadles(
    DemoHeat heat, DemoHands hands, IDbContextFactory<RecordsContext> contexts, Dictionary<string, long> equipment, Dictionary<string, long> materials)
{
    /// <summary>The ladle whose castings were tested and got a certificate.</summary>
    private const int TestedOrdinal = 3;

    private readonly DemoCastings castings = new(heat, hands);

    /// <param name="Minute">Of the tap, from the plan.</param>
    /// <param name="PouredMinutes">From the end of the reaction to the sample of the last metal.</param>
    /// <param name="MouldKg">Of each mould.</param>
    /// <param name="Moulds">Minutes from the end of the reaction to the end of each mould.</param>
    private sealed record Filling(
        int Ordinal, string Ladle, double Minute, double PlannedKg, double TappedKg, double TemperatureC, double PouredMinutes, double MouldKg, double[] Moulds);

    // Before the last mould of the last ladle the moulding line stood still.
    private static readonly Filling[] Fillings =
    [
        new(1, "ladle-2000", 100, 1700, 1712, 1486, 8, 330, [2, 3.5, 5, 6.5, 7.8]),
        new(2, "ladle-1500", 118, 1250, 1231, 1482, 9, 240, [2.5, 4, 5.5, 7, 8.8]),
        new(3, "ladle-2000", 137, 1700, 1694, 1479, 8.5, 330, [2, 3.5, 5, 6.5, 8.3]),
        new(4, "ladle-1000", 158, 750, 771, 1473, 16, 245, [3.5, 6.5, 15.8]),
    ];

    public async Task Pour(long heatId, CancellationToken cancellation)
    {
        foreach (var filling in Fillings) await Pour(heatId, filling, cancellation);
    }

    private async Task Pour(long heatId, Filling filling, CancellationToken cancellation)
    {
        var prepared = await hands.Do(hands.The<PreparePocket>(), Role.Melter, new(
            Key(filling, "pocket"), heat.At(filling.Minute - 6), heatId, equipment[filling.Ladle], filling.PlannedKg, filling.TemperatureC + 4,
            null, null, null, null, null, materials["inoculant-barium"], 0.4)
        {
            Extras = new() { Checks = PocketChecks.For(IronFamily.Ductile), CoverMaterialId = materials["cover-punchings"], CoverRatePercent = 1, Lots = Lots(filling) },
        });
        var id = prepared.TreatedLadleId;
        await hands.Do(hands.The<RecordTap>(), Role.Melter, new(
            Key(filling, "tap"), heat.At(filling.Minute), id, await Version(id, cancellation), filling.TappedKg, filling.TemperatureC));
        await hands.Do(hands.The<EndReaction>(), Role.Melter, new(
            Key(filling, "reaction"), heat.At(filling.Minute + 1.5), id, await Version(id, cancellation)));
        await heat.Temperature($"ladle-{filling.Ordinal}", filling.Minute + 2, heatId, id, filling.TemperatureC - 48);

        await Moulds(filling, id);
        var sampleId = await hands.Do(hands.The<RecordSample>(), Role.Melter, new(
            Key(filling, "sample"), heat.At(filling.Minute + 1.5 + filling.PouredMinutes), heatId, id, SampleKind.LastMetal,
            DemoBurns.Of(await LastMetal(id, filling.PouredMinutes, cancellation)), $"{filling.Ordinal + 1}"));
        await hands.Do(hands.The<RecordRest>(), Role.Melter, new(
            Key(filling, "rest"), heat.At(filling.Minute + 2.5 + filling.PouredMinutes), id, RestWay.Pigged, null,
            filling.TappedKg - filling.Moulds.Length * filling.MouldKg, null));
        if (filling.Ordinal == TestedOrdinal) await castings.Test(id, cancellation);
        await Decide(filling, id, sampleId, cancellation);
        if (filling.Ordinal == TestedOrdinal) await castings.Certify(id, cancellation);
    }

    private async Task Moulds(Filling filling, long id)
    {
        foreach (var (minutes, n) in filling.Moulds.Select((minutes, n) => (minutes, n + 1)))
        {
            await hands.Do(hands.The<RecordMould>(), Role.Melter, new(
                Key(filling, $"mould/{n}"), heat.At(filling.Minute + 1.5 + minutes), id, $"{filling.Ordinal}-{n}", filling.MouldKg, PourSeconds: 24));
        }
    }

    // The first bag of the alloy is used up before the third ladle; at the second one nobody said which inoculant it was.
    private static PocketLots Lots(Filling filling) => new(filling.Ordinal < 3 ? "M-1107" : "M-1121", "P-77", filling.Ordinal == 2 ? null : "B-0931");

    private async Task Decide(Filling filling, long id, long sampleId, CancellationToken cancellation)
    {
        var faded = filling.PouredMinutes > 12;
        await hands.Do(hands.The<DecideCastings>(), Role.Inspector, new(
            Key(filling, "decision"),
            heat.At(filling.Ordinal == TestedOrdinal ? DemoCastings.DecidedMinute : filling.Minute + 30),
            id,
            await Version(id, cancellation),
            faded ? CastingVerdict.Hold : CastingVerdict.Release,
            sampleId,
            faded ? "Magnesium under its least: the last moulds were poured late. Nodularity to be checked on the test piece." : null) { Password = DemoFoundry.Password });
    }

    /// <summary>What the spark shows of the last metal: the chain's iron, its magnesium faded, its carbon read low as grey coins are.</summary>
    private async Task<Analysis> LastMetal(long treatedLadleId, double minutes, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var treated = await db.TreatedLadles.AsNoTracking().SingleAsync(l => l.Id == treatedLadleId, cancellation);
        var iron = (await PouredIron.ThroughChain(db, treated, minutes, cancellation))!;
        return Analysis.Of(iron.Analysis.Select(p =>
            KeyValuePair.Create(p.Key, p.Key == Element.C ? p.Value * 0.96 : p.Value)));
    }

    private async Task<Guid> Version(long treatedLadleId, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        return await db.TreatedLadles.Where(l => l.Id == treatedLadleId).Select(l => l.Version).SingleAsync(cancellation);
    }

    private static Guid Key(Filling filling, string what) => DemoKey.Of($"heat/ladle/{filling.Ordinal}/{what}");
}
