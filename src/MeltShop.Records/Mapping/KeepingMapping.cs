using MeltShop.Records.Keeping;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

internal static class KeepingMapping
{
    public static void Apply(ModelBuilder model)
    {
        model.Entity<Draft>(draft =>
        {
            draft.HasIndex(d => new { d.Subject, d.Field }).IsUnique();
            draft.Refers<Draft, Person>(d => d.PersonId);
        });
        model.Entity<Entry>().HasKey(e => e.Key);
        model.Entity<TrailRow>(row =>
        {
            row.HasKey(r => r.Number);
            row.Property(r => r.Number).ValueGeneratedNever();
            row.HasIndex(r => r.EntryKey).IsUnique();
            // A handful of a shop's entries: a whole trail would be read for them otherwise.
            row.HasIndex(r => r.EnteredAt).HasFilter($"\"{nameof(TrailRow.Operation)}\" = '{WindowChanges.Operation}'").HasDatabaseName("IX_TrailRows_ChangeWindow");
        });
        model.Entity<TrailHead>(head =>
        {
            head.Property(h => h.Id).ValueGeneratedNever();
            head.HasData(new TrailHead { Number = 0, Hash = TrailHash.BeforeTheFirst });
        });
    }
}
