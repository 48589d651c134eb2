using MeltShop.Records;
using MeltShop.Records.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Importing.Subjects;

/// <summary>Which samples came in before, and whether they come with the same values again.</summary>
internal static class KnownSamples
{
    /// <summary>Parts the samples into new ones, known ones, and those that are here with other values.</summary>
    public static async Task<(List<FoundSample> New, List<FoundSample> Known, List<FoundSample> Other)> Part(
        RecordsContext db, IReadOnlyList<FoundSample> samples, CancellationToken ct)
    {
        var identities = samples.Select(s => s.Identity).ToList();
        var before = await db.ImportedSamples.Where(s => EF.Parameter(identities).Contains(s.Identity))
            .Select(s => new { s.Identity, s.SampleId, s.Text }).ToDictionaryAsync(s => s.Identity, ct);
        var (fresh, known, doubtful) = (new List<FoundSample>(), new List<FoundSample>(), new List<FoundSample>());
        foreach (var sample in samples)
        {
            if (!before.TryGetValue(sample.Identity, out var first)) fresh.Add(sample);
            else (first.Text == sample.Sample.Text ? known : doubtful).Add(sample with { KnownSampleId = first.SampleId });
        }

        var other = await Differing(db, doubtful, ct);
        return (fresh, [.. known, .. doubtful.Except(other)], other);
    }

    /// <summary>The same sample may come by another way, as another text: its values say whether it is the same.</summary>
    private static async Task<List<FoundSample>> Differing(RecordsContext db, List<FoundSample> samples, CancellationToken ct)
    {
        if (samples.Count == 0) return [];
        var ids = samples.Select(s => s.KnownSampleId!.Value).ToList();
        var stored = await db.Samples.AsNoTracking().Include(s => s.Figures).Include(s => s.Burns).ThenInclude(b => b.Readings).Where(s => EF.Parameter(ids).Contains(s.Id)).ToDictionaryAsync(s => s.Id, ct);
        return samples.FindAll(s => !IsSame(s, stored[s.KnownSampleId!.Value]));
    }

    private static bool IsSame(FoundSample found, Sample stored)
    {
        var subject = found.Sample.Subject;
        if ((stored.HeatId, stored.TreatedLadleId, stored.Kind, stored.ObservedAt) != (found.HeatId, found.TreatedLadleId, subject.Kind, found.Sample.TakenAt)) return false;
        if (stored.GreyFracture != subject.IsGrey) return false;
        if (!stored.Figures.Select(f => (f.Quantity, f.Value)).Order().SequenceEqual(found.Sample.Figures.Select(f => (f.Quantity, f.Value)).Order())) return false;
        var burns = stored.Burns.OrderBy(b => b.Ordinal).Select(b => b.Readings.Select(r => (r.Element.Symbol, r.Percent, r.BelowDetection)).Order());
        var given = found.Sample.Burns.Select(r => r.Readings.Select(v => (v.Element, v.Percent, v.BelowDetection)).Order());
        return burns.SelectMany((burn, i) => burn.Select(v => (i, v))).SequenceEqual(given.SelectMany((burn, i) => burn.Select(v => (i, v))));
    }
}
