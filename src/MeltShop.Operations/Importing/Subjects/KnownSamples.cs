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
            .Select(s => new Came(s.Identity, s.SampleId, s.Text, false)).ToDictionaryAsync(s => s.Identity, ct);
        var checks = await db.ImportedChecks.Where(c => EF.Parameter(identities).Contains(c.Identity))
            .Select(c => new Came(c.Identity, c.ControlSampleId, c.Text, true)).ToDictionaryAsync(c => c.Identity, ct);
        var (fresh, known, doubtful, other) = (new List<FoundSample>(), new List<FoundSample>(), new List<FoundSample>(), new List<FoundSample>());
        foreach (var sample in samples)
        {
            if ((before.GetValueOrDefault(sample.Identity) ?? checks.GetValueOrDefault(sample.Identity)) is not { } first) fresh.Add(sample);
            else if (first.IsCheck != sample.ReferenceId is not null) other.Add(sample); // a number is given once, to a coin or to a check
            else (first.Text == sample.Sample.Text ? known : doubtful).Add(sample with { KnownSampleId = first.Id });
        }

        var differing = await Differing(db, doubtful.FindAll(s => s.ReferenceId is null), ct);
        differing.AddRange(await DifferingChecks(db, doubtful.FindAll(s => s.ReferenceId is not null), ct));
        return (fresh, [.. known, .. doubtful.Except(differing)], [.. other, .. differing]);
    }

    /// <summary>A check counts as the same where its values are, whatever text brought it.</summary>
    private static async Task<List<FoundSample>> DifferingChecks(RecordsContext db, List<FoundSample> checks, CancellationToken ct)
    {
        if (checks.Count == 0) return [];
        var ids = checks.Select(c => c.KnownSampleId!.Value).ToList();
        var stored = await db.ControlSamples.AsNoTracking().Include(c => c.Readings).Where(c => EF.Parameter(ids).Contains(c.Id)).ToDictionaryAsync(c => c.Id, ct);
        return checks.FindAll(check => !IsSame(check, stored[check.KnownSampleId!.Value]));
    }

    private static bool IsSame(FoundSample found, ControlSample stored) =>
        (stored.ReferenceMaterialId, stored.ObservedAt) == (found.ReferenceId, found.Sample.TakenAt)
        && stored.Readings.Select(r => (r.Ordinal, r.Element.Symbol, r.Percent, r.BelowDetection)).Order()
            .SequenceEqual(found.Sample.Burns.SelectMany((row, i) => row.Readings.Select(v => (i + 1, v.Element, v.Percent, v.BelowDetection))).Order());

    /// <summary>The same sample may come by another way, as another text: its values say whether it is the same.</summary>
    private static async Task<List<FoundSample>> Differing(RecordsContext db, List<FoundSample> samples, CancellationToken ct)
    {
        if (samples.Count == 0) return [];
        var ids = samples.Select(s => s.KnownSampleId!.Value).ToList();
        var stored = await db.Samples.AsNoTracking().Include(s => s.Figures).Include(s => s.Burns).ThenInclude(b => b.Readings).Where(s => EF.Parameter(ids).Contains(s.Id)).ToDictionaryAsync(s => s.Id, ct);
        return samples.FindAll(s => !IsSame(s, stored[s.KnownSampleId!.Value]));
    }

    private sealed record Came(string Identity, long Id, string Text, bool IsCheck);

    private static bool IsSame(FoundSample found, Sample stored)
    {
        var subject = found.Sample.Subject;
        if ((stored.HeatId, stored.TreatedLadleId, stored.Kind) != (found.HeatId, found.TreatedLadleId, subject.Kind)) return false;
        // That of a coin which was sent ahead has the coin's time and not the file's.
        if (stored.CoinOnItsWayId is null && stored.ObservedAt != found.Sample.TakenAt) return false;
        if (stored.GreyFracture != subject.IsGrey) return false;
        if (!stored.Figures.Select(f => (f.Quantity, f.Value)).Order().SequenceEqual(found.Sample.Figures.Select(f => (f.Quantity, f.Value)).Order())) return false;
        var burns = stored.Burns.OrderBy(b => b.Ordinal).Select(b => b.Readings.Select(r => (r.Element.Symbol, r.Percent, r.BelowDetection)).Order());
        var given = found.Sample.Burns.Select(r => r.Readings.Select(v => (v.Element, v.Percent, v.BelowDetection)).Order());
        return burns.SelectMany((burn, i) => burn.Select(v => (i, v))).SequenceEqual(given.SelectMany((burn, i) => burn.Select(v => (i, v))));
    }
}
