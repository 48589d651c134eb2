using System.Globalization;
using System.Text;
using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Grades;
using MeltShop.Metallurgy.Heat;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Formulas;

/// <summary>Writes docs/METALLURGY.md from the formula records.</summary>
internal static class MetallurgyPage
{
    private const string Head = """
        # Metallurgy

        Every formula of `src/MeltShop.Metallurgy`: what it says, where it stands, where it comes from, where it holds, what speaks against it,
        and the worked example that `CatalogueTests.Formula_WorkedExample_IsReproduced` runs through the code. This page is generated from the
        records beside the formulas, with the class of tests that checks each against its sources and laws: change a record, then run the room's tests with `MELTSHOP_WRITE_DOCS=1` to write the page anew. A test
        fails while the two differ.

        A result is decision support. The melter and the metallurgist decide, by local codes and the site's procedures.

        """;

    private static readonly (string Table, string Code, string Source)[] Tables =
    [
        .. GradeProperties.All.GroupBy(g => (g.Standard, g.Edition)).Select(g => (
            $"Mechanical properties, {g.Count()} grades", nameof(GradeProperties),
            $"{g.Key.Standard}, {g.Key.Edition}; {g.Sum(x => x.Rows.Count(r => r.Standing == Standing.Read))} rows read, "
                + $"{g.Sum(x => x.Rows.Count(r => r.Standing == Standing.Remembered))} from memory")),
        ("Chemistry of one foundry by grade", nameof(FoundryWindow), FoundryWindow.Source.Key),
        ("Carbon and silicon by wall, pearlitic", nameof(WallGuide), WallGuide.Source.Key),
        ("Chemistry of Japanese grades at one foundry", nameof(FoundryWindow), FoundryWindow.JapaneseSource.Key),
        ("Composition of automotive grey grades", nameof(GreyComposition), GreyComposition.Source.Key),
        ("Carbon and silicon by wall, ferritic", $"{nameof(WallGuide)}.{nameof(WallGuide.FerriticRows)}", WallGuide.Source.Key),
        ("Tramp elements and nitrogen", nameof(TraceGuide), $"{Bibliography.Mullins80.Key}, {Bibliography.TraceSheet12.Key}, {Bibliography.Bcira41.Key}"),
        ("Temperature losses by step", nameof(LossGuide), LossGuide.Source.Key),
        ("Treatment alloys", nameof(AlloyGuide), string.Join(", ", AlloyGuide.All.Select(a => a.Source.Key).Distinct())),
        ("Residual magnesium by purpose", nameof(MagnesiumWindow), string.Join(", ", MagnesiumWindow.All.Select(w => w.Source.Key).Distinct())),
        ("Inoculants by kind", nameof(InoculantGuide), InoculantGuide.Source.Key),
        ("Magnesium processes", nameof(MagnesiumProcess), MagnesiumProcess.Source.Key),
        ("Inoculation rates", nameof(InoculationRate), string.Join(", ", InoculationRate.All.Select(r => r.Source.Key).Distinct())),
        ("Nodule counts by section", nameof(NoduleSeries), NoduleSeries.Source.Key),
        ("Austempering guidance", nameof(AustemperingGuide), Bibliography.DuctileIronData.Key),
    ];

    private static readonly Source[] TableSources =
    [
        FoundryWindow.Source, WallGuide.Source, Bibliography.Mullins80, Bibliography.Bcira41, MagnesiumProcess.Source, .. InoculationRate.All.Select(r => r.Source),
        NoduleSeries.Source, Bibliography.DuctileIronData, FoundryWindow.JapaneseSource, GreyComposition.Source, Bibliography.TraceSheet12, LossGuide.Source,
        .. AlloyGuide.All.Select(a => a.Source), .. MagnesiumWindow.All.Select(w => w.Source), InoculantGuide.Source, .. CarbonEquivalent.Forms.Select(f => f.Source),
    ];

    /// <summary>The tests that check a formula against its sources and laws, beside the worked example.</summary>
    internal static readonly IReadOnlyDictionary<string, string> Tests = new Dictionary<string, string>
    {
        ["carbon-equivalent"] = "CarbonEquivalentTests", ["saturation"] = "FurnaceFormulaTests", ["saturation-long"] = "FurnaceFormulaTests",
        ["liquidus-carbon-equivalent"] = "DerivedQuantitiesTests", ["liquidus-temperature"] = "LiquidusTests", ["liquidus-alloyed"] = "GreyGradeEquivalentTests",
        ["manganese-balance"] = "GreyGradeEquivalentTests", ["pearlite-factor"] = "DerivedQuantitiesTests", ["ferrite-share"] = "MonotoneLimitsTests",
        ["trace-factor"] = "DerivedQuantitiesTests", ["nitrogen-left"] = "FurtherQuantitiesTests", ["liquidus-calibration"] = "LiquidusCalibrationTests",
        ["grey-eutectic"] = "FurnaceFormulaTests", ["white-eutectic"] = "FurnaceFormulaTests", ["white-cup-carbon"] = "FurnaceFormulaTests",
        ["white-cup-silicon"] = "FurnaceFormulaTests", ["carbon-solubility"] = "QuantityEdges", ["crucible-equilibrium"] = "FurnaceFormulaTests",
        ["crucible-boiling"] = "FurnaceFormulaTests", ["crucible-drift"] = "BackwardSteps", ["normal-strength"] = "FurnaceFormulaTests",
        ["maturity"] = "FurnaceFormulaTests", ["heat-content"] = "HeatTests", ["melting-energy"] = "HeatTests", ["melting-minutes"] = "HeatTests",
        ["holding-loss"] = "HeatTests", ["addition-temperature"] = "HeatTests", ["addition-heat"] = "HeatTests", ["ladle-loss"] = "HeatTests", ["tapping-temperature"] = "HeatTests",
        ["addition-balance"] = "AdditionTests", ["addition-simple"] = "AdditionTests", ["treatment-balance"] = "TreatmentLaws",
        ["magnesium-addition-printed"] = "MagnesiumPrintTests", ["magnesium-yield"] = "MagnesiumPrintTests", ["fade-exponential"] = "MagnesiumPrintTests",
        ["fade-linear"] = "MagnesiumPrintTests", ["fade-fit"] = "LadleTests", ["re-ladling"] = "LadleTests", ["pouring-over"] = "PouringOverTests",
        ["magnesium-floor"] = "LadleTests",
        ["free-magnesium"] = "CatalogueTests", ["magnesium-vapour"] = "MagnesiumVapourTests", ["wire-metres"] = "LadleTests", ["wire-seconds"] = "LadleTests",
        ["tundish-hole"] = "LadleTests", ["chunky-graphite"] = "HeavySectionTests", ["inoculant"] = "LadleGuideTests", ["inoculant-silicon"] = "LadleGuideTests",
        ["inoculation-fade"] = "LadleTests", ["inoculation-fade-fit"] = "LadleGuideTests",
        ["furnace-window"] = "FurnaceWindowTests", ["poured-mass"] = "PouredMassTests", ["order-metal"] = "OrderMetalTests", ["order-heats"] = "OrderMetalTests",
        ["range-factor"] = "ReplicateBurnsTests", ["grubbs"] = "GrubbsTests",
        ["guard-band"] = "ControlChartTests", ["control-chart-constants"] = "ControlChartTests", ["capability-potential"] = "ControlChartTests",
        ["capability"] = "ControlChartTests", ["austenite-carbon"] = "GuideTests",
    };

    public static string Text()
    {
        var page = new StringBuilder(Head).Append('\n');
        page.Append("| Formula | Result | Code | Source | Tests |\n| --- | --- | --- | --- | --- |\n");
        foreach (var formula in Catalogue.All)
        {
            page.Append(CultureInfo.InvariantCulture, $"| [{formula.Name}](#{formula.Key}) | {formula.Unit} | `{formula.Code}` | {formula.Sources[0].Key} | `{Tests[formula.Key]}` |\n");
        }

        foreach (var formula in Catalogue.All) Append(page, formula);
        page.Append("\n## Tables kept as data\n\n| Table | Code | Source |\n| --- | --- | --- |\n");
        foreach (var (table, code, source) in Tables) page.Append(CultureInfo.InvariantCulture, $"| {table} | `{code}` | {source} |\n");
        page.Append("\n## Sources\n\n");
        foreach (var source in Catalogue.All.SelectMany(f => f.Sources).Concat(TableSources).DistinctBy(s => s.Key).OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            page.Append(CultureInfo.InvariantCulture, $"- **{source.Key}**: {source}\n");
        }

        return page.ToString();
    }

    private static void Append(StringBuilder page, Formula formula)
    {
        page.Append(CultureInfo.InvariantCulture, $"\n<a id=\"{formula.Key}\"></a>\n\n## {formula.Name}\n\n{formula.Sentence}\n\n    {formula.Expression}\n\n");
        foreach (var symbol in formula.Symbols) page.Append(CultureInfo.InvariantCulture, $"- {symbol.Name}: {symbol.Meaning} [{symbol.Unit}]\n");
        page.Append(CultureInfo.InvariantCulture, $"- Result: [{formula.Unit}]\n- Range: {formula.Range}\n");
        if (formula.Doubt is not null) page.Append(CultureInfo.InvariantCulture, $"- Doubt: {formula.Doubt}\n");
        page.Append(CultureInfo.InvariantCulture, $"- Worked example: {formula.Example.Text}\n- Tests: `{Tests[formula.Key]}`\n");
        page.Append(CultureInfo.InvariantCulture, $"- Code: `{formula.Code}`\n- Sources: {string.Join(", ", formula.Sources.Select(s => s.Key))}\n");
    }
}
