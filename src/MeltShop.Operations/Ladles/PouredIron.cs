using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Storing;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>The iron in the moulds of a treated ladle, as far as it is known.</summary>
public static class PouredIron
{
    /// <summary>
    /// The last-metal sample with its carbon taken from the chain: a coin of treated iron often freezes grey, and the spark reads
    /// its carbon wrong. Everything else is as measured.
    /// </summary>
    /// <param name="sampled">Mean of the last-metal sample.</param>
    /// <param name="throughChain">The furnace sample through treatment and inoculation; null for grey iron, whose carbon counts as measured.</param>
    public static Analysis Of(Analysis sampled, Metal? throughChain)
    {
        if (throughChain is null) return sampled;
        var withoutCarbon = Analysis.Of(sampled.Where(p => p.Key != Element.C));
        return throughChain.Elements.Contains(Element.C) ? withoutCarbon.With(Element.C, throughChain.Percent(Element.C)) : withoutCarbon;
    }

    /// <summary>The iron tapped, through the treatment and the inoculation of its card: a prediction. Null for grey iron.</summary>
    /// <param name="minutes">Minutes after the end of the reaction: magnesium fades.</param>
    public static async Task<Metal?> ThroughChain(RecordsContext db, TreatedLadle treated, double minutes, CancellationToken cancellation)
    {
        var from = await db.InForce<Tap>().AsNoTracking().SingleAsync(t => t.TreatedLadleId == treated.Id, cancellation);
        return from.FromTreatedLadleId is null ? await OfTheFurnace(db, treated, minutes, cancellation) : await PouredTogether(db, treated, minutes, cancellation);
    }

    /// <summary>Of a ladle, a pouring furnace or a trough that was filled from ladles: what each brought.</summary>
    private static async Task<Metal?> PouredTogether(RecordsContext db, TreatedLadle treated, double minutes, CancellationToken cancellation)
    {
        var came = await db.InForce<LadleRest>().AsNoTracking().Where(r => r.IntoLadleId == treated.Id && !r.IsWithdrawn).ToListAsync(cancellation);
        var ids = came.Select(r => r.TreatedLadleId).Distinct().ToList();
        if (!await db.PocketCards.AnyAsync(c => c.TreatedLadleId == treated.Id && c.Problem != null, cancellation)) return null;
        var parts = new List<Metal>();
        foreach (var ladle in await db.TreatedLadles.AsNoTracking().Where(l => ids.Contains(l.Id)).ToListAsync(cancellation))
        {
            // What was itself poured together is followed no further: two ladles may have been poured into each other.
            var iron = await db.InForce<Tap>().AnyAsync(t => t.TreatedLadleId == ladle.Id && t.FromTreatedLadleId != null, cancellation)
                ? null : await OfTheFurnace(db, ladle, minutes, cancellation);
            parts.Add(Metal.Of(came.Where(r => r.TreatedLadleId == ladle.Id).Sum(r => r.Kg), iron?.Analysis ?? Analysis.Empty));
        }

        var all = parts.Aggregate(Metal.None, (sum, part) => sum.Plus(part));
        return Metal.Of(all.Kg, Analysis.Of(all.Analysis.Where(p => parts.All(part => part.Elements.Contains(p.Key))))); // not known of one is not known
    }

    private static async Task<Metal?> OfTheFurnace(RecordsContext db, TreatedLadle treated, double minutes, CancellationToken cancellation)
    {
        var card = await db.InForce<PocketCard>().AsNoTracking().Where(c => c.TreatedLadleId == treated.Id).OrderBy(c => c.Id).LastAsync(cancellation);
        if (card.Problem is null) return null;
        var tap = await db.InForce<Tap>().AsNoTracking().SingleAsync(t => t.TreatedLadleId == treated.Id, cancellation);
        var problem = await Problem(db, treated, card, tap, cancellation);
        var alloyKg = card.AlloyKg ?? await db.InForce<MagnesiumDose>().Where(d => d.TreatedLadleId == treated.Id).OrderBy(d => d.Id)
            .Select(d => (double?)d.Kg).FirstOrDefaultAsync(cancellation);
        if (alloyKg is null) return null; // not dosed yet
        var inoculant = await db.CompositionOf(card.InoculantMaterialId, RecoveryStage.Bath, cancellation);
        var treatedIron = PocketQuestion.AfterTap(
            problem, alloyKg.Value, tap.Kg, tap.TemperatureC);
        var lost = (treatedIron.MgPercent - treatedIron.MgPercentAt(minutes)) / 100 * treatedIron.AtStart.Kg;
        var iron = Inoculation.After(
            treatedIron.AtStart.Without(Element.Mg, lost), inoculant!, PocketQuestion.InoculantKg(card.InoculantKg, card.PlannedKg, tap.Kg));

        // An alloy brings a trace of carbon, which is not the carbon of an iron whose own is not known.
        return problem.BaseAnalysis.Has(Element.C) ? iron : Metal.Of(iron.Kg, Analysis.Of(iron.Analysis.Where(p => p.Key != Element.C)));
    }

    /// <summary>
    /// The treatment of the card. Where its bath sample was corrected or moved away since, the iron that it started from is the bath by
    /// the samples that stand; where none does, its analysis is not known.
    /// </summary>
    private static async Task<TreatmentProblem> Problem(
        RecordsContext db, TreatedLadle treated, PocketCard card, Tap tap, CancellationToken cancellation)
    {
        var problem = StoredJson.Value<TreatmentProblem>(card.Problem!);
        if (FormulaVersions.BathSample(card.Versions) is not { } used || !await db.Samples.AnyAsync(s => s.SupersedesId == used, cancellation)) return problem;
        var heat = await db.Heats.AsNoTracking().SingleAsync(h => h.Id == treated.HeatId, cancellation);
        var bath = await BathNow.Load(db, heat, tap.ObservedAt, cancellation);
        var sulphur = problem.BaseAnalysis.OrZero(Element.S); // what the alloy was dosed for stays what it was
        return problem with { BaseAnalysis = Analysis.Of((bath?.Metal.Analysis ?? Analysis.Empty).Where(p => p.Key != Element.Mg)).With(Element.S, sulphur) };
    }

    /// <summary>How a last-metal sample of a treated ladle stands to the poured windows of the grade that its castings are judged by.</summary>
    public static async Task<IReadOnlyList<WindowVerdict>> Verdicts(
        RecordsContext db, TreatedLadle treated, Sample sample, CancellationToken cancellation)
    {
        var gradeId = await CastGrade.Id(db, treated.Id, cancellation);
        var windows = await db.GradeWindows.AsNoTracking()
            .Where(w => w.GradeId == gradeId && w.Stage == WindowStage.Poured).OrderBy(w => w.Id)
            .ToListAsync(cancellation);
        var means = await db.SampleMeans.AsNoTracking().Where(m => m.SampleId == sample.Id).ToListAsync(cancellation);
        var sampled = Analysis.Of(means.Select(m => KeyValuePair.Create(m.Element, m.Percent)));
        var floor = await db.PocketCards.Where(c => c.TreatedLadleId == treated.Id).MaxAsync(c => c.MgFloorPercent, cancellation);
        if (floor is { } percent) Raise(windows, percent);
        return WindowVerdict.Of(windows, Of(sampled, await ThroughChain(db, treated, minutes: 0, cancellation)));
    }

    // The card may ask for more magnesium than the grade does, never for less.
    private static void Raise(List<GradeWindow> windows, double floor)
    {
        var magnesium = windows.Find(w => w.Quantity == Element.Mg.Symbol);
        if (magnesium is null) windows.Add(new() { Stage = WindowStage.Poured, Quantity = Element.Mg.Symbol, Least = floor });
        else magnesium.Least = Math.Max(magnesium.Least ?? 0, floor);
    }
}
