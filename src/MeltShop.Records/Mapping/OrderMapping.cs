using MeltShop.Records.Grades;
using MeltShop.Records.Orders;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

internal static class OrderMapping
{
    public static void Apply(ModelBuilder model) => model.Entity<CastingOrder>(order =>
    {
        order.HasIndex(o => o.Number).IsUnique();
        order.HasIndex(o => new { o.State, o.DueOn });
        order.Refers<CastingOrder, Grade>(o => o.GradeId);
    });
}
