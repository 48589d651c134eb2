using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Storing;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>What was known of a ladle's castings when somebody decided about them; kept with the decision.</summary>
/// <param name="SampleId">The last sample of the last metal; null where there was none.</param>
/// <param name="Window">How it stood to the poured windows.</param>
/// <param name="Tests">How the test pieces stood to the grade.</param>
/// <param name="LateMoulds">Moulds poured after a limit.</param>
public sealed record SeenCastings(
    long? SampleId, IReadOnlyList<WindowVerdict> Window, IReadOnlyList<SeenTest> Tests, IReadOnlyList<string> LateMoulds)
{
    /// <summary>What was kept; null for a decision from before it was.</summary>
    public static SeenCastings? Of(string? kept) => kept is null ? null : StoredJson.Value<SeenCastings>(kept);

    /// <summary>What is known now.</summary>
    /// <param name="tests">The test pieces, judged by the grade that is decided about.</param>
    internal static async Task<string> Now(
        RecordsContext db, TreatedLadle treated, long? sampleId, IReadOnlyList<TestedPiece> tests, CancellationToken cancellation)
    {
        var sample = sampleId is { } id ? await db.Samples.AsNoTracking().SingleAsync(s => s.Id == id, cancellation) : null;
        var late = await db.InForce<PouredMould>().Where(m => m.TreatedLadleId == treated.Id && !m.IsWithdrawn && m.LateFor != null)
            .OrderBy(m => m.Id).Select(m => m.Label).ToListAsync(cancellation);
        return StoredJson.Text(new SeenCastings(
            sampleId,
            sample is { Kind: SampleKind.LastMetal } ? await PouredIron.Verdicts(db, treated, sample, cancellation) : [],
            [.. tests.SelectMany(t => t.Verdicts.Select(v => new SeenTest(t.Piece.Label, v.Property, v.Value, v.Least, v.Most, v.Standing)))],
            late));
    }
}

/// <summary>One property of a test piece as it was seen.</summary>
public sealed record SeenTest(string Piece, CastProperty Property, double? Value, double? Least, double? Most, PropertyStanding Standing);
