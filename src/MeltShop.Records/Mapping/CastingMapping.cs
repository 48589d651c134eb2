using MeltShop.Records.Castings;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

internal static class CastingMapping
{
    public static void Apply(ModelBuilder model)
    {
        model.Entity<TestPiece>(piece =>
        {
            piece.Refers<TestPiece, TreatedLadle>(p => p.TreatedLadleId);
            piece.HasIndex(p => p.TreatedLadleId);
        });
        model.Entity<TestResult>(result =>
        {
            result.Refers<TestResult, TestPiece>(r => r.TestPieceId);
            result.HasIndex(r => r.TestPieceId);
        });
        model.Entity<Certificate>(certificate =>
        {
            certificate.Refers<Certificate, TreatedLadle>(c => c.TreatedLadleId);
            certificate.HasIndex(c => new { c.TreatedLadleId, c.Revision }).IsUnique();
        });
    }
}
