using MeltShop.Records.Sites;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

internal static class SiteMapping
{
    public static void Apply(ModelBuilder model)
    {
        model.Entity<Site>().HasIndex(s => s.Code).IsUnique();
        model.Entity<Furnace>().HasIndex(f => f.Code).IsUnique();
        model.Entity<Ladle>().HasIndex(l => l.Code).IsUnique();
        model.Entity<LadleFigure>(figure =>
        {
            figure.Refers<LadleFigure, Ladle>(f => f.LadleId);
            figure.HasIndex(f => f.LadleId);
        });
        model.Entity<HeatCounter>(counter =>
        {
            counter.HasKey(c => new { c.SiteId, c.Year });
            counter.Refers<HeatCounter, Site>(c => c.SiteId);
        });
    }
}
