using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Sites;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

internal static class LadleMapping
{
    public static void Apply(ModelBuilder model)
    {
        model.Entity<TreatedLadle>(ladle =>
        {
            ladle.Refers<TreatedLadle, Heat>(l => l.HeatId);
            ladle.Refers<TreatedLadle, Ladle>(l => l.LadleId);
            ladle.HasIndex(l => new { l.HeatId, l.Ordinal }).IsUnique();
            ladle.HasIndex(l => new { l.State, l.Id });
        });
        model.Entity<PocketCard>(card =>
        {
            card.Refers<PocketCard, TreatedLadle>(c => c.TreatedLadleId);
            card.Refers<PocketCard, Material>(c => c.AlloyMaterialId);
            card.Refers<PocketCard, Material>(c => c.InoculantMaterialId);
            card.Refers<PocketCard, Material>(c => c.CoverMaterialId);
            card.Refers<PocketCard, Material>(c => c.PearliteMaterialId);
            card.HasIndex(c => c.TreatedLadleId);
        });
        model.Entity<Tap>(tap =>
        {
            tap.Refers<Tap, TreatedLadle>(t => t.TreatedLadleId);
            tap.Refers<Tap, Heat>(t => t.HeatId);
            tap.Refers<Tap, TreatedLadle>(t => t.FromTreatedLadleId);
            tap.HasIndex(t => t.TreatedLadleId);
            tap.HasIndex(t => t.HeatId);
        });
        Pouring(model);
        model.Entity<CastingDecision>(decision =>
        {
            decision.Refers<CastingDecision, TreatedLadle>(d => d.TreatedLadleId);
            decision.Refers<CastingDecision, Sample>(d => d.SampleId);
            decision.Refers<CastingDecision, Grade>(d => d.GradeId);
            decision.HasIndex(d => d.TreatedLadleId);
            decision.HasIndex(d => new { d.Verdict, d.TreatedLadleId });
        });
        model.Entity<LadleStep>(step =>
        {
            step.Refers<LadleStep, TreatedLadle>(s => s.TreatedLadleId);
            step.HasIndex(s => s.TreatedLadleId);
        });
    }

    private static void Pouring(ModelBuilder model)
    {
        model.Entity<PouredMould>(mould =>
        {
            mould.Refers<PouredMould, TreatedLadle>(m => m.TreatedLadleId);
            mould.HasIndex(m => m.TreatedLadleId);
        });
        model.Entity<LadleRest>(rest =>
        {
            rest.Refers<LadleRest, TreatedLadle>(r => r.TreatedLadleId);
            rest.Refers<LadleRest, TreatedLadle>(r => r.IntoLadleId);
            rest.Refers<LadleRest, Sample>(r => r.SampleId);
            rest.HasIndex(r => r.TreatedLadleId);
            rest.HasIndex(r => r.IntoLadleId);
        });
        model.Entity<LadleInoculation>(inoculation =>
        {
            inoculation.Refers<LadleInoculation, TreatedLadle>(i => i.TreatedLadleId);
            inoculation.Refers<LadleInoculation, Material>(i => i.MaterialId);
            inoculation.HasIndex(i => i.TreatedLadleId);
        });
        model.Entity<MagnesiumDose>(dose =>
        {
            dose.Refers<MagnesiumDose, TreatedLadle>(d => d.TreatedLadleId);
            dose.Refers<MagnesiumDose, Material>(d => d.MaterialId);
            dose.HasIndex(d => d.TreatedLadleId);
        });
    }
}
