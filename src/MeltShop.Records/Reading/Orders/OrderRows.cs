using MeltShop.Records.Orders;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Orders;

/// <summary>Reads orders with the codes of their grades.</summary>
internal static class OrderRows
{
    public static Task<List<OrderView>> Load(RecordsContext db, IQueryable<CastingOrder> which, CancellationToken ct) => which
        .Select(o => new OrderView(
            o.Id, o.Version, o.Number, o.Casting, o.GradeId, db.Grades.Single(g => g.Id == o.GradeId).Code, o.WallMm, o.CastingKg, o.MouldYieldPercent,
            o.Pieces, o.PiecesPoured, o.DueOn, o.State))
        .ToListAsync(ct);

    /// <summary>Every open order that still needs metal, the nearest due first: they are what is to be melted, and are never cut.</summary>
    public static async Task<IReadOnlyList<OrderView>> ToPour(RecordsContext db, CancellationToken ct) =>
        [.. (await Load(db, db.CastingOrders.Where(o => o.State == OrderState.Open), ct)).Where(o => o.PiecesLeft > 0).OrderBy(o => o.DueOn).ThenBy(o => o.Number, NaturalOrder.Names)];
}
