using System.Globalization;
using System.Text;
using MeltShop.Metallurgy;
using MeltShop.Operations.Importing;
using MeltShop.Operations.Importing.Rows;
using MeltShop.Operations.Importing.Taking;
using MeltShop.Records;
using MeltShop.Records.Importing;
using MeltShop.Web.Api.Weighings;
using MeltShop.Web.Components.Fields;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Watching;

/// <summary>Takes in a file that nobody looks at: only where each of its rows is sound, for there is no preview. What is refused waits for a person.</summary>
internal sealed class FileTaking(
    IDbContextFactory<RecordsContext> contexts, ImportDesk desk, ImportSamples import, IStringLocalizer<Texts.Findings> words, IStringLocalizer<Texts.Import> text, TimeProvider clock)
{
    private const string Station = "watched folder";

    /// <returns>Whether its samples are in the records, and what is to be said of it.</returns>
    public async Task<(bool IsTaken, string Report)> Take(WatchedSettings settings, string name, byte[] bytes, CancellationToken ct)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var map = await db.ImportMaps.Where(m => m.Name == settings.Map && m.IsActive).Select(m => (long?)m.Id).SingleOrDefaultAsync(ct);
        if (map is null) return Refused(new Finding("map", "importMap.unknown"));
        if (await ScaleSender.Person(db, Station, settings.By, ct) is not { } by) return Refused(new Finding("by", "person.unknown", settings.By));
        var looked = await desk.Look(map.Value, bytes, ct);
        if (!looked.Succeeded) return Refused([.. looked.Findings]);
        var preview = looked.Value;
        if (preview.Found.RefusedRows > 0) return (false, Report(preview.Found.Faults));
        if (preview.Found.NewRows == 0) return (true, text["Report.Known", preview.Found.KnownRows]);
        var outcome = await import.Run(by, preview.Taking(Guid.NewGuid(), clock.GetUtcNow(), ImportWay.Folder, name), ct);
        return outcome.Succeeded ? (true, text["Report.Taken", outcome.Value.Samples, outcome.Value.Rows, preview.Found.KnownRows]) : Refused([.. outcome.Findings]);
    }

    private (bool, string) Refused(params Finding[] findings) => (false, string.Join('\n', findings.Select(f => FindingWords.Of(words, f))));

    /// <summary>A line a reason: line, column, what stands there, why.</summary>
    private string Report(IReadOnlyList<RowFault> faults)
    {
        var report = new StringBuilder().AppendLine(text["Report.Refused"]);
        foreach (var fault in faults)
            report.AppendLine(CultureInfo.InvariantCulture, $"{fault.Line}\t{fault.Column}\t{fault.Text}\t{FindingWords.Of(words, new Finding("", fault.Code, fault.Arguments))}");
        return report.ToString();
    }
}
