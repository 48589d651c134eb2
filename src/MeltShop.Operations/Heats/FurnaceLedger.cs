using MeltShop.Operations.Correcting;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>The liquid-metal ledger of a furnace: what is in it is the sum of its lines that no later one corrects.</summary>
public static class FurnaceLedger
{
    /// <summary>
    /// How far a ledger of weighed charge and estimated yields may be off, as a share of what was in the furnace: a mass of metal is
    /// normally known to 5 %, in a furnace as in a ladle.
    /// </summary>
    public const double Uncertainty = LadleContent.Uncertainty;

    /// <summary>Less than a scale shows, kg: sums of doubles do not end on zero.</summary>
    public const double Dust = 1e-6;

    /// <summary>Liquid in the furnace, kg.</summary>
    public static Task<double> InFurnace(this RecordsContext db, long furnaceId, CancellationToken cancellation) =>
        db.Furnaces.Where(f => f.Id == furnaceId).Select(f => f.LiquidKg).SingleAsync(cancellation);

    /// <summary>
    /// Liquid in the furnace at that time by what is in force now, kg. Back from now, because what came later is little and what came before is
    /// everything; in one statement, because who only reads does not keep the furnace, and a line that came between two would be taken off a sum without it.
    /// </summary>
    internal static Task<double> InFurnace(this RecordsContext db, long furnaceId, DateTimeOffset at, CancellationToken cancellation) =>
        db.Furnaces.Where(f => f.Id == furnaceId)
            .Select(f => f.LiquidKg - db.InForce<FurnaceMetal>().Where(m => m.FurnaceId == f.Id && m.ObservedAt > at).Sum(m => m.Kg))
            .SingleAsync(cancellation);

    /// <summary>
    /// How far what is in the furnace may be off, kg: what the last dip may be, and <see cref="Uncertainty"/> of what was charged or poured back
    /// since, whatever heats lie between, as independent errors (root of the sum of squares, JCGM 100:2008, Guide to the expression of uncertainty
    /// in measurement, 5.1.2). A dip of which nobody said how good it is may be off by <see cref="Uncertainty"/> of its level; without any dip it is
    /// <see cref="Uncertainty"/> of all that ever came, which grows until somebody dips, up to a full furnace: more can neither be there nor be missing.
    /// </summary>
    public static double PlusMinusKg(LedgerBasis basis)
    {
        ArgumentNullException.ThrowIfNull(basis);
        return Math.Min(basis.CapacityKg, double.Hypot(basis.PlusMinusKg ?? Uncertainty * basis.LevelKg, Uncertainty * basis.CameKg));
    }

    /// <summary>Adds a line to the ledger, whose furnace the caller keeps.</summary>
    internal static Task Book(
        this Writing writing, Heat heat, FurnaceMetalKind kind, double kg, CancellationToken cancellation, string? reason = null, double? levelKg = null) =>
        writing.Insert(
            new()
            {
                EntryKey = writing.Stamp.EntryKey,
                PersonId = writing.Stamp.PersonId,
                ObservedAt = writing.Stamp.ObservedAt,
                EnteredAt = writing.Stamp.EnteredAt,
                Reason = reason,
                FurnaceId = heat.FurnaceId,
                HeatId = heat.Id,
                Kind = kind,
                Kg = kg,
                LevelKg = levelKg,
            },
            cancellation);

    /// <summary>All metal that this heat has had, kg: the heel and what was charged or poured back.</summary>
    internal static async Task<double> Handled(this RecordsContext db, Heat heat, CancellationToken cancellation) =>
        heat.HeelKg + await db.InForce<FurnaceMetal>()
            .Where(m => m.HeatId == heat.Id && (m.Kind == FurnaceMetalKind.Charged || m.Kind == FurnaceMetalKind.PouredBack))
            .SumAsync(m => m.Kg, cancellation);

    /// <summary>
    /// How much may leave the furnace, kg: what the ledger shows and what it may be off, and at least <see cref="Uncertainty"/> of what the heat
    /// has had: what a scale shows is not refused for a dip that was read too well. Beyond what the ledger shows it is no more than a full furnace holds.
    /// </summary>
    internal static async Task<double> AtMost(this RecordsContext db, Heat heat, double inFurnaceKg, CancellationToken cancellation)
    {
        var basis = await LedgerBasis.Load(db, heat.FurnaceId, cancellation);
        var offKg = Math.Max(PlusMinusKg(basis), Uncertainty * await db.Handled(heat, cancellation));
        var fullKg = (1 + Uncertainty) * await db.Furnaces.Where(f => f.Id == heat.FurnaceId).Select(f => f.CapacityKg).SingleAsync(cancellation);
        return Math.Max(inFurnaceKg, Math.Min(inFurnaceKg + offKg, fullKg));
    }
}
