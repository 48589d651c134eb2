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
        db.InForce<FurnaceMetal>().Where(m => m.FurnaceId == furnaceId).SumAsync(m => m.Kg, cancellation);

    /// <summary>Liquid in the furnace at that time by what is in force now, kg.</summary>
    internal static Task<double> InFurnace(this RecordsContext db, long furnaceId, DateTimeOffset at, CancellationToken cancellation) =>
        db.InForce<FurnaceMetal>().Where(m => m.FurnaceId == furnaceId && m.ObservedAt <= at).SumAsync(m => m.Kg, cancellation);

    /// <summary>
    /// How far what is in the furnace may be off, kg: what a dip may be, and <see cref="Uncertainty"/> of what was charged or poured back
    /// since, as independent errors (root of the sum of squares, JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2).
    /// Without a dip of which anybody said how good it is, <see cref="Uncertainty"/> of all that the heat has had.
    /// </summary>
    public static double PlusMinusKg(double heelKg, IReadOnlyList<MetalView> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var standing = lines.Where(l => !l.Origin.IsCorrected).OrderBy(l => l.Origin.ObservedAt).ThenBy(l => l.Origin.FactId).ToList();
        var dip = standing.FindLastIndex(l => l is { Kind: FurnaceMetalKind.Dipped, PlusMinusKg: not null });
        var came = standing.Skip(dip + 1).Where(l => l.Kind is FurnaceMetalKind.Charged or FurnaceMetalKind.PouredBack).Sum(l => l.Kg);
        return dip < 0 ? Uncertainty * (heelKg + came) : double.Hypot(standing[dip].PlusMinusKg!.Value, Uncertainty * came);
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

    /// <summary>How much may leave the furnace, kg: what the ledger shows and what it may be off.</summary>
    internal static async Task<double> AtMost(this RecordsContext db, Heat heat, double inFurnaceKg, CancellationToken cancellation) =>
        inFurnaceKg + Uncertainty * await db.Handled(heat, cancellation);
}
