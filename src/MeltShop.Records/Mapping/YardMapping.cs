using MeltShop.Records.Heats;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Mapping;

internal static class YardMapping
{
    public static void Apply(ModelBuilder model)
    {
        model.Entity<Material>(material =>
        {
            material.HasIndex(m => m.Code).IsUnique();
            material.Property(m => m.Uses).HasConversion<int>(); // flags are asked for by their bits

            // No foreign key on AnalysisId: the analysis refers to the material already, and a circle cannot be inserted.
        });
        model.Entity<MaterialAnalysis>(analysis =>
        {
            analysis.Refers<MaterialAnalysis, Material>(a => a.MaterialId);
            analysis.Holds(a => a.Percents, (MaterialPercent p) => p.AnalysisId);
            analysis.HasIndex(a => a.MaterialId);
        });
        model.Entity<MaterialPercent>(percent =>
        {
            percent.ToTable("MaterialPercents");
            percent.HasIndex(p => new { p.AnalysisId, p.Element }).IsUnique();
        });
        model.Entity<PriceFact>(price =>
        {
            price.Refers<PriceFact, Material>(p => p.MaterialId);
            price.HasIndex(p => p.MaterialId);
        });
        model.Entity<StockFact>(stock =>
        {
            stock.Refers<StockFact, Material>(s => s.MaterialId);
            stock.Refers<StockFact, Heat>(s => s.HeatId);
            stock.HasIndex(s => s.MaterialId);
            stock.HasIndex(s => s.HeatId);
            stock.HasIndex(s => s.Lot).HasFilter("\"Lot\" IS NOT NULL");
        });
        model.Entity<LotPlace>(place =>
        {
            place.Refers<LotPlace, Material>(p => p.MaterialId);
            place.HasIndex(p => p.MaterialId);
        });
    }
}
