using MeltShop.Records.Orders;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Grades;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Orders;

/// <summary>The orders, with the metal that they need.</summary>
public sealed class OrdersPage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Orders that are listed.</summary>
    public const int Most = 200;

    public async Task<OrdersView> Load(OrderFilter filter, CancellationToken ct = default)
    {
        ArgumentNullException.ThrowIfNull(filter);
        await using var db = await contexts.CreateDbContextAsync(ct);
        var due = db.CastingOrders.Where(o => filter.Until == null || o.DueOn <= filter.Until);
        var listed = filter.IsClosed
            ? due.Where(o => o.State != OrderState.Open).OrderByDescending(o => o.DueOn).ThenBy(o => o.Number)
            : due.Where(o => o.State == OrderState.Open).OrderBy(o => o.DueOn).ThenBy(o => o.Number);
        var rows = await OrderRows.Load(db, listed.Take(Most + 1), ct);
        var toPour = filter.IsClosed ? [] : await OrderRows.ToPour(db, ct);
        return new(
            [.. rows.Take(Most).GroupBy(o => o.DueOn).SelectMany(day => day.InNaturalOrder(o => o.Number))], rows.Count > Most, [.. toPour.Where(o => filter.Until is null || o.DueOn <= filter.Until)],
            await Grades(db, null, ct), await FurnaceRows.Load(db, ct));
    }

    /// <summary>One order, or null.</summary>
    public async Task<OrderPageView?> Order(long id, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return (await OrderRows.Load(db, db.CastingOrders.Where(o => o.Id == id), ct)).SingleOrDefault() is { } order
            ? new(order, await Grades(db, order.GradeId, ct)) : null;
    }

    private static async Task<IReadOnlyList<OrderGrade>> Grades(RecordsContext db, long? gradeId, CancellationToken ct) =>
        (await db.Grades.Where(g => g.IsActive || g.Id == gradeId).Select(g => new OrderGrade(g.Id, g.Code)).ToListAsync(ct)).InNaturalOrder(g => g.Code);
}
