using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Storing;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>What the recovery of a ladle was, by its own fillings.</summary>
/// <param name="From">The first tap that it was learnt from.</param>
/// <param name="To">The last one.</param>
public sealed record LadleRecovery(LearntRecovery Recovery, DateTimeOffset From, DateTimeOffset To);

/// <summary>
/// Learns each ladle's recovery from the first sample after the reaction. A filling counts where its pocket is all the magnesium it
/// had: not after a top-up by wire, nor after other iron was poured onto it. Only a person takes it over.
/// </summary>
public sealed class LearntRecoveries(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Fillings that are looked at, the newest: an older lining is another ladle.</summary>
    public const int Newest = 300;

    private sealed record Filling(long LadleId, DateTimeOffset TappedAt, double Percent);

    /// <summary>By the id of the ladle.</summary>
    public async Task<IReadOnlyDictionary<long, LadleRecovery>> Load(CancellationToken ct)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var treated = await db.TreatedLadles.AsNoTracking().Where(l => l.ReactionEndedAt != null).OrderByDescending(l => l.Id).Take(Newest).ToListAsync(ct);
        var ids = treated.Select(l => l.Id).ToList();
        var cards = (await db.InForce<PocketCard>().AsNoTracking().Where(c => ids.Contains(c.TreatedLadleId) && c.Problem != null && c.AlloyKg != null).ToListAsync(ct))
            .ToLookup(c => c.TreatedLadleId);
        var taps = (await db.InForce<Tap>().AsNoTracking().Where(t => ids.Contains(t.TreatedLadleId)).ToListAsync(ct)).ToLookup(t => t.TreatedLadleId);
        var samples = (await db.InForce<Sample>().AsNoTracking().Include(s => s.Means)
            .Where(s => s.TreatedLadleId != null && ids.Contains(s.TreatedLadleId.Value) && s.Means.Any(m => m.Element == Element.Mg)).ToListAsync(ct))
            .ToLookup(s => s.TreatedLadleId!.Value);
        var other = (await db.InForce<MagnesiumDose>().Where(d => ids.Contains(d.TreatedLadleId)).Select(d => d.TreatedLadleId).ToListAsync(ct))
            .Concat(await db.InForce<LadleRest>().Where(r => r.IntoLadleId != null && ids.Contains(r.IntoLadleId.Value) && !r.IsWithdrawn).Select(r => r.IntoLadleId!.Value).ToListAsync(ct))
            .ToHashSet();
        return treated.Where(l => !other.Contains(l.Id))
            .Select(l => Learn(l, cards[l.Id].LastOrDefault(), taps[l.Id].LastOrDefault(), samples[l.Id].MinBy(s => (s.ObservedAt, s.Id)))).OfType<Filling>()
            .GroupBy(f => f.LadleId).ToDictionary(
                g => g.Key, g => new LadleRecovery(LearntRecovery.Of([.. g.Select(f => f.Percent)])!, g.Min(f => f.TappedAt), g.Max(f => f.TappedAt)));
    }

    private static Filling? Learn(TreatedLadle treated, PocketCard? card, Tap? tap, Sample? sample)
    {
        if (card is null || tap is null || sample is null || sample.ObservedAt < treated.ReactionEndedAt) return null;
        var problem = StoredJson.Value<TreatmentProblem>(card.Problem!);
        var measured = sample.Means.Single(m => m.Element == Element.Mg).Percent;
        var sulphur = sample.Means.SingleOrDefault(m => m.Element == Element.S)?.Percent ?? problem.Recipe.SulphurLeftPercent;
        problem = problem with { TemperatureC = tap.TemperatureC ?? problem.TemperatureC, Recipe = problem.Recipe with { SulphurLeftPercent = sulphur } };
        var minutes = (sample.ObservedAt - treated.ReactionEndedAt!.Value).TotalMinutes;
        return LearntRecovery.Percent(problem, card.AlloyKg!.Value, tap.Kg, minutes, measured) is { } percent ? new(treated.LadleId, tap.ObservedAt, percent) : null;
    }
}
