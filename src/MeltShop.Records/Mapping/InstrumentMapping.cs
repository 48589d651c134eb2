using MeltShop.Records.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

internal static class InstrumentMapping
{
    public static void Apply(ModelBuilder model)
    {
        model.Entity<Instrument>(instrument =>
        {
            instrument.HasIndex(i => i.Code).IsUnique();
            instrument.Holds(i => i.Elements, (InstrumentElement e) => e.InstrumentId);
        });
        model.Entity<InstrumentElement>(element =>
        {
            element.ToTable("InstrumentElements");
            element.HasIndex(e => new { e.InstrumentId, e.Element }).IsUnique();
        });
    }
}
