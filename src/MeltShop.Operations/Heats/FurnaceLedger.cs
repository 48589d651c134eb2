using MeltShop.Records;
using MeltShop.Records.Heats;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>The liquid-metal ledger of a furnace: what is in it is the sum of its lines.</summary>
public static class FurnaceLedger
{
    /// <summary>
    /// How far a ledger of weighed charge and estimated yields may be off, as a share of what was in the furnace: a mass of metal is
    /// normally known to 5 % (P.-M. Cabanne, S.G. Iron Conclave, Mumbai, 2011).
    /// </summary>
    public const double Uncertainty = 0.05;

    /// <summary>Less than a scale shows, kg: sums of doubles do not end on zero.</summary>
    public const double Dust = 1e-6;

    /// <summary>Liquid in the furnace, kg.</summary>
    public static Task<double> InFurnace(this RecordsContext db, long furnaceId, CancellationToken cancellation) =>
        db.FurnaceMetals.Where(m => m.FurnaceId == furnaceId).SumAsync(m => m.Kg, cancellation);

    internal static void Book(this Writing writing, Heat heat, FurnaceMetalKind kind, double kg, string? reason = null) =>
        writing.Book(heat.FurnaceId, heat.Id, kind, kg, reason);

    internal static void Book(this Writing writing, long furnaceId, long? heatId, FurnaceMetalKind kind, double kg, string? reason) =>
        writing.Db.Add(new FurnaceMetal
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            Reason = reason,
            FurnaceId = furnaceId,
            HeatId = heatId,
            Kind = kind,
            Kg = kg,
        });

    /// <summary>All metal that this heat has had, kg: the heel and what was charged.</summary>
    internal static async Task<double> Handled(this RecordsContext db, Heat heat, CancellationToken cancellation) =>
        heat.HeelKg + await db.FurnaceMetals
            .Where(m => m.HeatId == heat.Id && m.Kind == FurnaceMetalKind.Charged)
            .SumAsync(m => m.Kg, cancellation);
}
