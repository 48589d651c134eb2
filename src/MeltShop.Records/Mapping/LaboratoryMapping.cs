using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

internal static class LaboratoryMapping
{
    public static void Apply(ModelBuilder model)
    {
        model.Entity<Sample>(sample =>
        {
            sample.Refers<Sample, Heat>(s => s.HeatId);
            sample.Refers<Sample, TreatedLadle>(s => s.TreatedLadleId);
            sample.Refers<Sample, Instrument>(s => s.InstrumentId);
            sample.HasIndex(s => new { s.InstrumentId, s.ObservedAt });
            sample.Holds(s => s.Burns, (Burn b) => b.SampleId);
            sample.Holds(s => s.Means, (SampleMean m) => m.SampleId);
            sample.Holds(s => s.Figures, (SampleFigure f) => f.SampleId);
            sample.Refers<Sample, CoinOnItsWay>(s => s.CoinOnItsWayId);
            sample.HasIndex(s => s.CoinOnItsWayId);
            sample.HasIndex(s => s.HeatId);
            sample.HasIndex(s => s.CoinNumber).HasFilter("\"CoinNumber\" IS NOT NULL");
            sample.HasIndex(s => s.TreatedLadleId);
        });
        model.Entity<SampleFigure>(figure =>
        {
            figure.ToTable("SampleFigures");
            figure.HasIndex(f => new { f.SampleId, f.Quantity }).IsUnique();
        });
        model.Entity<CoinOnItsWay>(coin =>
        {
            coin.Refers<CoinOnItsWay, Heat>(c => c.HeatId);
            coin.Refers<CoinOnItsWay, TreatedLadle>(c => c.TreatedLadleId);
            coin.HasIndex(c => c.HeatId);
            coin.HasIndex(c => c.CoinNumber);
        });
        model.Entity<Burn>(burn =>
        {
            burn.HasIndex(b => new { b.SampleId, b.Ordinal }).IsUnique();
            burn.Holds(b => b.Readings, (Laboratory.Reading r) => r.BurnId);
        });
        model.Entity<BurnDecision>(decision =>
        {
            decision.Refers<BurnDecision, Sample>(d => d.SampleId);
            decision.HasIndex(d => d.SampleId);
        });
        model.Entity<Laboratory.Reading>().HasIndex(r => new { r.BurnId, r.Element }).IsUnique();
        model.Entity<SampleMean>().HasIndex(m => new { m.SampleId, m.Element }).IsUnique();
    }
}
