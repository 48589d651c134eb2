using MeltShop.Records;
using MeltShop.Records.Castings;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Castings;

/// <summary>What is known of the castings of a treated ladle: test pieces judged, certificates issued, and the end of the trail.</summary>
public sealed class CastingsBoard(IDbContextFactory<RecordsContext> contexts)
{
    /// <param name="Pieces">In the order in which they were cast.</param>
    /// <param name="Certificates">The first revision first.</param>
    /// <param name="TrailHead">Hash at the end of the trail; empty before anything was recorded.</param>
    public sealed record View(IReadOnlyList<TestedPiece> Pieces, IReadOnlyList<IssuedCertificate> Certificates, string TrailHead);

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
        return new(await TestedCastings.Load(db, treatedLadleId, cancellation), certificates, head ?? "");
    }

    /// <summary>The bytes of a certificate as they were issued; null where there is none of this id.</summary>
    public async Task<Certificate?> Document(long certificateId, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        return await db.Certificates.AsNoTracking().SingleOrDefaultAsync(c => c.Id == certificateId, cancellation);
    }
}
