using System.Globalization;
using System.Text;
using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Grades;
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
        records beside the formulas: change a record, then run the room's tests with `MELTSHOP_WRITE_DOCS=1` to write the page anew. A test
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
        ("Tramp elements and nitrogen", nameof(TraceGuide), $"{Bibliography.Mullins80.Key}, {Bibliography.Bcira41.Key}"),
        ("Magnesium processes", nameof(MagnesiumProcess), MagnesiumProcess.Source.Key),
        ("Inoculation rates", nameof(InoculationRate), string.Join(", ", InoculationRate.All.Select(r => r.Source.Key).Distinct())),
        ("Nodule counts by section", nameof(NoduleSeries), NoduleSeries.Source.Key),
        ("Austempering guidance", nameof(AustemperingGuide), Bibliography.DuctileIronData.Key),
    ];

    private static readonly Source[] TableSources =
    [
        FoundryWindow.Source, WallGuide.Source, Bibliography.Mullins80, Bibliography.Bcira41, MagnesiumProcess.Source, .. InoculationRate.All.Select(r => r.Source),
        NoduleSeries.Source, Bibliography.DuctileIronData, .. CarbonEquivalent.Forms.Select(f => f.Source),
    ];

    public static string Text()
    {
        var page = new StringBuilder(Head).Append('\n');
        page.Append("| Formula | Result | Code | Source |\n| --- | --- | --- | --- |\n");
        foreach (var formula in Catalogue.All)
        {
            page.Append(CultureInfo.InvariantCulture, $"| [{formula.Name}](#{formula.Key}) | {formula.Unit} | `{formula.Code}` | {formula.Sources[0].Key} |\n");
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
        page.Append(CultureInfo.InvariantCulture, $"- Worked example: {formula.Example.Text}\n");
        page.Append(CultureInfo.InvariantCulture, $"- Code: `{formula.Code}`\n- Sources: {string.Join(", ", formula.Sources.Select(s => s.Key))}\n");
    }
}
