using MeltShop.Operations.Heats;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>The iron of a treated ladle: what was tapped and poured into it, less what went out.</summary>
/// <param name="InKg">Tapped, and poured in from other ladles, kg.</param>
/// <param name="OutKg">Poured into moulds, pigged, poured back and into other ladles, kg.</param>
internal sealed record LadleMass(double InKg, double OutKg)
{
    /// <summary>By the scales, kg.</summary>
    public double LeftKg => InKg - OutKg;

    /// <summary>What may still be in it, kg: masses of poured moulds are known no better than the furnace's.</summary>
    public double AtMostKg => LeftKg + FurnaceLedger.Uncertainty * InKg;

    public static async Task<LadleMass> Load(RecordsContext db, long treatedLadleId, double tappedKg, CancellationToken ct)
    {
        var came = await db.InForce<LadleRest>().Where(r => r.IntoLadleId == treatedLadleId && !r.IsWithdrawn).SumAsync(r => r.Kg, ct);
        var moulds = await db.InForce<PouredMould>().Where(m => m.TreatedLadleId == treatedLadleId && !m.IsWithdrawn).SumAsync(m => m.Kg, ct);
        var rests = await db.InForce<LadleRest>().Where(r => r.TreatedLadleId == treatedLadleId && !r.IsWithdrawn).SumAsync(r => r.Kg, ct);
        var back = await db.InForce<FurnaceMetal>()
            .Where(m => m.TreatedLadleId == treatedLadleId && m.Kind == FurnaceMetalKind.PouredBack).SumAsync(m => m.Kg, ct);
        return new(tappedKg + came, moulds + rests + back);
    }
}
