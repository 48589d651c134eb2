using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>The iron of a treated ladle by the scales.</summary>
/// <param name="InKg">Tapped, and poured in from other ladles, kg.</param>
/// <param name="OutKg">Poured into moulds, pigged, poured back and into other ladles, kg.</param>
public sealed record LadleContent(double InKg, double OutKg)
{
    /// <summary>How far masses of poured iron may be off, as a share of all that was in it: 5 % is normal (P.-M. Cabanne, S.G. Iron Conclave, Mumbai, 2011).</summary>
    public const double Uncertainty = 0.05;

    /// <summary>By the scales, kg.</summary>
    public double LeftKg => InKg - OutKg;

    /// <summary>What may still be in it, kg.</summary>
    public double AtMostKg => LeftKg + Uncertainty * InKg;

    /// <summary>What must still be in it, kg; the same doubt the other way.</summary>
    public double AtLeastKg => LeftKg - Uncertainty * InKg;
}

/// <summary>Reads what is in treated ladles, in one statement.</summary>
public static class LadleContents
{
    public static async Task<IReadOnlyDictionary<long, LadleContent>> Load(RecordsContext db, IReadOnlyCollection<long> ids, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(db);
        if (ids.Count == 0) return new Dictionary<long, LadleContent>();
        var taps = db.InForce<Tap>();
        var rests = db.InForce<LadleRest>().Where(r => !r.IsWithdrawn);
        var moulds = db.InForce<PouredMould>().Where(m => !m.IsWithdrawn);
        var back = db.InForce<FurnaceMetal>().Where(m => m.Kind == FurnaceMetalKind.PouredBack);
        return await db.TreatedLadles.Where(l => ids.Contains(l.Id)).Select(l => new
        {
            l.Id,
            Tapped = taps.Where(t => t.TreatedLadleId == l.Id).Sum(t => t.Kg),
            Came = rests.Where(r => r.IntoLadleId == l.Id).Sum(r => r.Kg),
            Poured = moulds.Where(m => m.TreatedLadleId == l.Id).Sum(m => m.Kg),
            Went = rests.Where(r => r.TreatedLadleId == l.Id).Sum(r => r.Kg),
            Back = back.Where(m => m.TreatedLadleId == l.Id).Sum(m => m.Kg),
        }).ToDictionaryAsync(l => l.Id, l => new LadleContent(l.Tapped + l.Came, l.Poured + l.Went + l.Back), ct);
    }

    /// <summary>That of one ladle.</summary>
    public static async Task<LadleContent> One(RecordsContext db, long treatedLadleId, CancellationToken ct) => (await Load(db, [treatedLadleId], ct))[treatedLadleId];
}
