using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Ladles;
using MeltShop.Records;
using MeltShop.Records.Castings;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Castings;

/// <summary>What is known of the castings of a treated ladle: test pieces judged, certificates issued, and the end of the trail.</summary>
public sealed class CastingsBoard(IDbContextFactory<RecordsContext> contexts)
{
    /// <param name="Pieces">In the order in which they were cast.</param>
    /// <param name="Certificates">The first revision first.</param>
    /// <param name="TrailHead">Hash at the end of the trail; empty before anything was recorded.</param>
    public sealed record View(IReadOnlyList<TestedPiece> Pieces, IReadOnlyList<IssuedCertificate> Certificates, string TrailHead)
    {
        /// <summary>The grade that the castings are judged by: the heat's, or the one that they were downgraded to.</summary>
        public required string GradeCode { get; init; }

        /// <summary>The test units, with how each stands apart from the ladle.</summary>
        public required CastingUnits Units { get; init; }

        /// <summary>Other grades of the shop whose standard has minima here.</summary>
        public required IReadOnlyList<OtherGrade> OtherGrades { get; init; }
    }

    public sealed record OtherGrade(long Id, string Code);

    /// <summary>A certificate without its bytes.</summary>
    public sealed record IssuedCertificate(long Id, string Number, int Revision, string Sha256, DateTimeOffset IssuedAt, string Person, string? Reason);

    public async Task<View> Load(long treatedLadleId, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var certificates = await (
            from certificate in db.Certificates
            join person in db.Users on certificate.PersonId equals person.Id
            where certificate.TreatedLadleId == treatedLadleId
            orderby certificate.Revision
            select new IssuedCertificate(
                certificate.Id, certificate.Number, certificate.Revision, certificate.Sha256, certificate.EnteredAt, person.DisplayName, certificate.Reason))
            .ToListAsync(cancellation);
        var head = await db.TrailHeads.AsNoTracking().Select(h => h.Hash).SingleOrDefaultAsync(cancellation);
        var gradeId = await CastGrade.Id(db, treatedLadleId, cancellation);
        var grades = await db.Grades.AsNoTracking().Where(g => g.IsActive || g.Id == gradeId).OrderBy(g => g.Code)
            .Select(g => new OtherGrade(g.Id, g.Code)).ToListAsync(cancellation);
        return new(await TestedCastings.Load(db, treatedLadleId, gradeId, cancellation), certificates, head ?? "")
        {
            GradeCode = grades.Single(g => g.Id == gradeId).Code,
            Units = await CastingUnits.Load(db, treatedLadleId, cancellation),
            OtherGrades = grades.Where(g => g.Id != gradeId && GradeProperties.For(g.Code) is not null).InNaturalOrder(g => g.Code),
        };
    }

    /// <summary>The bytes of a certificate as they were issued; null where there is none of this id.</summary>
    public async Task<Certificate?> Document(long certificateId, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        return await db.Certificates.AsNoTracking().SingleOrDefaultAsync(c => c.Id == certificateId, cancellation);
    }
}
