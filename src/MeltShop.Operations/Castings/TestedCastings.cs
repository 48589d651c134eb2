using MeltShop.Metallurgy.Grades;
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
    public static async Task<IReadOnlyList<TestedPiece>> Load(RecordsContext db, long treatedLadleId, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(db);
        var pieces = await db.InForce<TestPiece>().AsNoTracking().Where(p => p.TreatedLadleId == treatedLadleId).OrderBy(p => p.Id).ToListAsync(cancellation);
        if (pieces.Count == 0) return [];
        var ids = pieces.Select(p => p.Id).ToList();
        var results = (await db.InForce<TestResult>().AsNoTracking().Where(r => ids.Contains(r.TestPieceId)).OrderBy(r => r.Id).ToListAsync(cancellation)).ToLookup(r => r.TestPieceId);
        var code = await (
            from ladle in db.TreatedLadles
            join heat in db.Heats on ladle.HeatId equals heat.Id
            join grade in db.Grades on heat.GradeId equals grade.Id
            where ladle.Id == treatedLadleId
            select grade.Code).SingleAsync(cancellation);
        var asked = GradeProperties.For(code);
        return
        [
            .. pieces.Select(p => new TestedPiece(
                p, [.. results[p.Id]], PropertyVerdict.Of(asked, p.WallMm, p.SampleType, results[p.Id].ToDictionary(r => r.Property, r => r.Value)))),
        ];
    }
}
