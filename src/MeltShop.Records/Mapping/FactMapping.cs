using MeltShop.Records.Keeping;
using MeltShop.Records.People;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace MeltShop.Records.Mapping;

/// <summary>What all facts share: their entry, their person, and at most one correction of each.</summary>
internal static class FactMapping
{
    public static void Apply(ModelBuilder model)
    {
        foreach (var type in model.Model.GetEntityTypes().Where(t => t.ClrType.IsAssignableTo(typeof(Fact))).ToList())
        {
            var fact = model.Entity(type.ClrType);
            fact.HasOne(typeof(Entry)).WithMany().HasForeignKey(nameof(Fact.EntryKey)).OnDelete(DeleteBehavior.Restrict);
            fact.HasOne(typeof(Person)).WithMany().HasForeignKey(nameof(Fact.PersonId)).OnDelete(DeleteBehavior.Restrict);
            fact.HasOne(type.ClrType).WithMany().HasForeignKey(nameof(Fact.SupersedesId)).OnDelete(DeleteBehavior.Restrict);
            fact.HasIndex(nameof(Fact.EntryKey));
            fact.HasIndex(nameof(Fact.SupersedesId)).IsUnique(); // two people cannot correct the same fact
        }
    }
}
