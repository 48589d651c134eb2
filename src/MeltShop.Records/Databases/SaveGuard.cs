using MeltShop.Records.Keeping;
using MeltShop.Records.Mapping;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace MeltShop.Records.Databases;

/// <summary>Last look at what is about to be saved: facts stay as they are, versions move on, numbers are numbers.</summary>
internal static class SaveGuard
{
    /// <exception cref="InvalidOperationException">A fact would be changed or deleted, or a number is not finite.</exception>
    public static void Apply(ChangeTracker tracker)
    {
        foreach (var entry in tracker.Entries())
        {
            if (entry.State is not (EntityState.Added or EntityState.Modified or EntityState.Deleted)) continue;
            if (entry.State != EntityState.Added && AppendOnly.Includes(entry.Metadata.ClrType))
                throw new InvalidOperationException($"A {entry.Metadata.ClrType.Name} is kept as it is: correct it by a new one that supersedes it.");
            if (entry.State == EntityState.Deleted) continue;
            if (entry.Entity is IVersioned versioned) versioned.Version = Guid.NewGuid();
            foreach (var property in entry.Properties)
            {
                if (property.CurrentValue is double number && !double.IsFinite(number))
                    throw new InvalidOperationException($"{entry.Metadata.ClrType.Name}.{property.Metadata.Name} is no finite number.");
            }
        }
    }
}
