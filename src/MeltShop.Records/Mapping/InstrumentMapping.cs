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
        model.Entity<ReferenceMaterial>(reference =>
        {
            reference.HasIndex(r => r.Code).IsUnique();
            reference.Holds(r => r.Values, (CertifiedValue v) => v.ReferenceMaterialId);
        });
        model.Entity<CertifiedValue>(value =>
        {
            value.ToTable("CertifiedValues");
            value.HasIndex(v => new { v.ReferenceMaterialId, v.Element }).IsUnique();
        });
        model.Entity<ControlSample>(control =>
        {
            control.Refers<ControlSample, Instrument>(c => c.InstrumentId);
            control.Refers<ControlSample, ReferenceMaterial>(c => c.ReferenceMaterialId);
            control.Holds(c => c.Readings, (ControlReading r) => r.ControlSampleId);
            control.HasIndex(c => new { c.InstrumentId, c.ObservedAt, c.Id });
        });
        model.Entity<ControlReading>(reading =>
        {
            reading.ToTable("ControlReadings");
            reading.HasIndex(r => new { r.ControlSampleId, r.Ordinal, r.Element }).IsUnique();
        });
    }
}
