using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace MeltShop.Records.Mapping;

internal static class References
{
    /// <summary>A foreign key without navigation; what is referred to cannot be deleted.</summary>
    public static void Refers<TRow, TTarget>(this EntityTypeBuilder<TRow> row, Expression<Func<TRow, object?>> key)
        where TRow : class
        where TTarget : class =>
        row.HasOne<TTarget>().WithMany().HasForeignKey(key).OnDelete(DeleteBehavior.Restrict);

    /// <summary>The parts that a row is made of.</summary>
    public static void Holds<TRow, TPart>(
        this EntityTypeBuilder<TRow> row, Expression<Func<TRow, IEnumerable<TPart>?>> parts, Expression<Func<TPart, object?>> key)
        where TRow : class
        where TPart : class =>
        row.HasMany(parts).WithOne().HasForeignKey(key).OnDelete(DeleteBehavior.Restrict);
}
