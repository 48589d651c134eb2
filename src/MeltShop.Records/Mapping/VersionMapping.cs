using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

/// <summary>A row that people edit is saved only where its version is still the one that its editor saw.</summary>
internal static class VersionMapping
{
    public static void Apply(ModelBuilder model)
    {
        foreach (var type in model.Model.GetEntityTypes().Where(t => t.ClrType.IsAssignableTo(typeof(IVersioned))))
            type.GetProperty(nameof(IVersioned.Version)).IsConcurrencyToken = true;
    }
}
