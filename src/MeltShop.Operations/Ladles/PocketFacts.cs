using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Sites;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>What the records know that a pocket card needs.</summary>
/// <param name="Bath">Analysis of the bath now.</param>
/// <param name="InFurnaceKg">Liquid in the furnace by its ledger, kg.</param>
/// <param name="AtMostKg">How much may leave the furnace, kg: that and what the ledger may be off.</param>
/// <param name="Alloy">The treatment alloy; null for grey iron, or where none was named or found.</param>
public sealed record PocketFacts(
    IronFamily Family,
    GradeRecipe? Recipe,
    Ladle Ladle,
    Analysis Bath,
    double InFurnaceKg,
    double AtMostKg,
    MaterialComposition? Alloy,
    long? AlloyMaterialId,
    long? AlloyAnalysisId,
    long BathSampleId)
{
    /// <summary>Figures of the ladle with their bands, the last of each kind.</summary>
    public IReadOnlyDictionary<LadleFigureKind, LadleFigure> Figures { get; init; } = new Dictionary<LadleFigureKind, LadleFigure>();

    /// <summary>Cover steel that was chosen; null for none.</summary>
    public MaterialComposition? Cover { get; init; }

    /// <summary>The inoculant that was chosen; null before one was.</summary>
    public MaterialComposition? Inoculant { get; init; }

    /// <summary>Copper or tin that was chosen; null for none.</summary>
    public MaterialComposition? Pearlite { get; init; }

    /// <summary>Windows of the poured iron.</summary>
    public IReadOnlyList<GradeWindow> Poured { get; init; } = [];

    /// <summary>How the ladle is treated, with what is printed for it; null where nothing is.</summary>
    public MagnesiumProcess? Process => LadleProcess.Of(Ladle.Process);

    public bool IsDosedOnWeighedMass => Process?.DosedOnWeighedMass == true;

    /// <summary>Recovery of magnesium as a band, %: the ladle's own figure, or what is printed for its process.</summary>
    public (double Least, double Most)? RecoveryBand =>
        Figures.GetValueOrDefault(LadleFigureKind.MgRecovery) is { Least: { } least, Most: { } most } ? (least, most)
        : Process is { } process ? (process.RecoveryLeast, process.RecoveryMost) : null;

    /// <summary>Reads them; the alloy is the recipe's where none is named.</summary>
    public static async Task<PocketFacts> Load(
        RecordsContext db, Heat heat, Ladle ladle, BathNow bath, long? alloyMaterialId, long? inoculantMaterialId, PocketExtras extras,
        CancellationToken cancellation)
    {
        var inFurnaceKg = await db.InFurnace(heat.FurnaceId, cancellation);
        var grade = await db.Grades.AsNoTracking().SingleAsync(g => g.Id == heat.GradeId, cancellation);
        var alloyCode = grade.Recipe?.TreatmentAlloyCode;
        var alloy = grade.Family == IronFamily.Grey ? null : await db.Materials.AsNoTracking().SingleOrDefaultAsync(
            m => alloyMaterialId != null ? m.Id == alloyMaterialId : m.Code == alloyCode, cancellation);
        return new PocketFacts(
            grade.Family,
            grade.Recipe,
            ladle,
            bath.Metal.Analysis,
            inFurnaceKg,
            await db.AtMost(heat, inFurnaceKg, cancellation),
            alloy is null ? null : await db.CompositionOf(alloy.Id, RecoveryStage.Bath, cancellation),
            alloy?.Id,
            alloy?.AnalysisId,
            bath.SampleId)
        {
            Figures = (await db.LadleFigures.AsNoTracking().Where(f => f.LadleId == ladle.Id).ToListAsync(cancellation))
                .GroupBy(f => f.Kind).ToDictionary(g => g.Key, g => g.MaxBy(f => f.Id)!),
            Cover = await Composition(db, extras.CoverMaterialId, cancellation),
            Inoculant = await Composition(db, inoculantMaterialId, cancellation),
            Pearlite = await Composition(db, extras.PearliteMaterialId, cancellation),
            Poured = await db.GradeWindows.AsNoTracking().Where(w => w.GradeId == grade.Id && w.Stage == WindowStage.Poured).ToListAsync(cancellation),
        };
    }

    private static async Task<MaterialComposition?> Composition(RecordsContext db, long? materialId, CancellationToken cancellation) =>
        materialId is { } id ? await db.CompositionOf(id, RecoveryStage.Bath, cancellation) : null;
}
