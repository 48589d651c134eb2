using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Sites;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

internal static class HeatMapping
{
    /// <summary>The states in which a heat has its furnace to itself.</summary>
    private const string InTheFurnace = """ "State" IN ('Charging', 'Bath', 'Tapping') """;

    public static void Apply(ModelBuilder model)
    {
        model.Entity<Plan>(plan =>
        {
            plan.Refers<Plan, Furnace>(p => p.FurnaceId);
            plan.Refers<Plan, Grade>(p => p.GradeId);
        });
        model.Entity<Heat>(heat =>
        {
            heat.Refers<Heat, Site>(h => h.SiteId);
            heat.Refers<Heat, Furnace>(h => h.FurnaceId);
            heat.Refers<Heat, Grade>(h => h.GradeId);
            heat.Refers<Heat, Plan>(h => h.PlanId);
            heat.HasIndex(h => h.Number).IsUnique();
            heat.HasIndex(h => h.FurnaceId, "IX_Heats_InTheFurnace").IsUnique().HasFilter(InTheFurnace.Trim());
            heat.HasIndex(h => h.PlanId);
            heat.HasIndex(h => new { h.StartedAt, h.Id });
            heat.HasIndex(h => new { h.GradeId, h.StartedAt, h.Id });
            heat.HasIndex(h => new { h.FurnaceId, h.StartedAt, h.Id });
            heat.HasIndex(h => new { h.State, h.StartedAt, h.Id });
        });
        model.Entity<Heel>(heel =>
        {
            heel.Refers<Heel, Furnace>(h => h.FurnaceId);
            heel.Refers<Heel, Heat>(h => h.FromHeatId);
            heel.Refers<Heel, Sample>(h => h.SampleId);
            heel.Holds(h => h.Percents, (HeelPercent p) => p.HeelId);
            heel.HasIndex(h => new { h.FurnaceId, h.Id });
            heel.HasIndex(h => new { h.FurnaceId, h.ObservedAt, h.Id });
            heel.HasIndex(h => h.FromHeatId);
        });
        model.Entity<HeelPercent>(percent =>
        {
            percent.ToTable("HeelPercents");
            percent.HasIndex(p => new { p.HeelId, p.Element }).IsUnique();
        });
        model.Entity<Weighing>(weighing =>
        {
            weighing.Refers<Weighing, Heat>(w => w.HeatId);
            weighing.Refers<Weighing, Material>(w => w.MaterialId);
            weighing.HasIndex(w => w.HeatId);
        });
        model.Entity<TemperatureReading>(reading =>
        {
            reading.Refers<TemperatureReading, Heat>(r => r.HeatId);
            reading.Refers<TemperatureReading, TreatedLadle>(r => r.TreatedLadleId);
            reading.HasIndex(r => r.HeatId);
        });
        model.Entity<BathCorrection>(correction =>
        {
            correction.Refers<BathCorrection, Heat>(c => c.HeatId);
            correction.Refers<BathCorrection, Sample>(c => c.SampleId);
            correction.HasIndex(c => c.HeatId);
        });
        model.Entity<FurnaceMetal>(metal =>
        {
            metal.Refers<FurnaceMetal, Furnace>(m => m.FurnaceId);
            metal.Refers<FurnaceMetal, Heat>(m => m.HeatId);
            metal.Refers<FurnaceMetal, TreatedLadle>(m => m.TreatedLadleId);
            metal.Holds(m => m.Percents, (FurnaceMetalPercent p) => p.FurnaceMetalId);
            metal.HasIndex(m => new { m.FurnaceId, m.Kind, m.ObservedAt, m.Id });
            metal.HasIndex(m => new { m.FurnaceId, m.ObservedAt, m.Id });
            metal.HasIndex(m => m.HeatId);
        });
        model.Entity<FurnaceMetalPercent>(percent =>
        {
            percent.ToTable("FurnaceMetalPercents");
            percent.HasIndex(p => new { p.FurnaceMetalId, p.Element }).IsUnique();
        });
        model.Entity<HeatCorrection>(correction =>
        {
            correction.Refers<HeatCorrection, Heat>(c => c.HeatId);
            correction.Refers<HeatCorrection, Grade>(c => c.GradeId);
            correction.Refers<HeatCorrection, Grade>(c => c.FormerGradeId);
            correction.Refers<HeatCorrection, Furnace>(c => c.FurnaceId);
            correction.Refers<HeatCorrection, Furnace>(c => c.FormerFurnaceId);
            correction.HasIndex(c => c.HeatId);
        });
        model.Entity<HeatStep>(step =>
        {
            step.Refers<HeatStep, Heat>(s => s.HeatId);
            step.HasIndex(s => s.HeatId);
        });
    }
}
