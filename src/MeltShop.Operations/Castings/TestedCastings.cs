using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Ladles;
using MeltShop.Records;
using MeltShop.Records.Castings;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Castings;

/// <summary>A test piece with the results in force and how they stand to the grade.</summary>
public sealed record TestedPiece(TestPiece Piece, IReadOnlyList<TestResult> Results, IReadOnlyList<PropertyVerdict> Verdicts);

/// <summary>The test pieces of a treated ladle, judged: one place for the page, the decision and the certificate.</summary>
public static class TestedCastings
{
    /// <summary>By the grade that the castings are judged by now.</summary>
    public static async Task<IReadOnlyList<TestedPiece>> Load(RecordsContext db, long treatedLadleId, CancellationToken cancellation) =>
        await Load(db, treatedLadleId, await CastGrade.Id(db, treatedLadleId, cancellation), cancellation);

    /// <summary>By a grade.</summary>
    public static async Task<IReadOnlyList<TestedPiece>> Load(RecordsContext db, long treatedLadleId, long gradeId, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(db);
        var pieces = await db.TestPieces.AsNoTracking().Where(p => p.TreatedLadleId == treatedLadleId).OrderBy(p => p.Id).ToListAsync(cancellation);
        if (pieces.Count == 0) return [];
        var ids = pieces.Select(p => p.Id).ToList();
        var corrected = pieces.Where(p => p.SupersedesId is not null).ToDictionary(p => p.SupersedesId!.Value, p => p.Id);
        var results = (await db.InForce<TestResult>().AsNoTracking().Where(r => ids.Contains(r.TestPieceId)).OrderBy(r => r.Id).ToListAsync(cancellation))
            .ToLookup(r => Standing(r.TestPieceId, corrected));
        var asked = GradeProperties.For(await db.Grades.Where(g => g.Id == gradeId).Select(g => g.Code).SingleAsync(cancellation));
        return
        [
            .. pieces.Where(p => !corrected.ContainsKey(p.Id) && !p.IsWithdrawn).Select(p => new TestedPiece(
                p, [.. results[p.Id]], PropertyVerdict.Of(asked, p.WallMm, p.SampleType, results[p.Id].ToDictionary(r => r.Property, r => r.Value)))),
        ];
    }

    // What was tested stays with the piece when the piece's own row is put right.
    private static long Standing(long pieceId, Dictionary<long, long> corrected)
    {
        while (corrected.TryGetValue(pieceId, out var later)) pieceId = later;
        return pieceId;
    }
}
