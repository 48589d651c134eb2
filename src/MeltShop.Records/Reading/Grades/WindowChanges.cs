using System.Globalization;
using System.Text.Json;
using MeltShop.Records.Grades;
using MeltShop.Records.Keeping;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Grades;

/// <summary>A window as it stood until somebody changed it.</summary>
/// <param name="Until">When the change was entered.</param>
/// <param name="Before">What held until then; null where the grade did not limit the quantity.</param>
public sealed record WindowChange(long GradeId, DateTimeOffset Until, WindowStage Stage, string Quantity, WindowView? Before);

/// <summary>The windows of grades as they stood at some time: read from the trail, which holds what each change replaced.</summary>
public static class WindowChanges
{
    /// <summary>The operation whose entries change windows; the index of the trail is for these alone.</summary>
    internal const string Operation = "ChangeWindow";

    /// <summary>The changes that were entered after some time, the earliest first.</summary>
    public static async Task<IReadOnlyList<WindowChange>> Since(RecordsContext db, DateTimeOffset from, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(db);
        var rows = await db.TrailRows.AsNoTracking().Where(r => r.Operation == Operation && r.EnteredAt > from).OrderBy(r => r.Number).ToListAsync(ct);
        return [.. rows.SelectMany(Read)];
    }

    /// <summary>The windows of a grade at one stage as they held at some time.</summary>
    public static IReadOnlyList<WindowView> At(this GradeView grade, WindowStage stage, DateTimeOffset at, IEnumerable<WindowChange> changes)
    {
        ArgumentNullException.ThrowIfNull(grade);
        var later = changes.Where(c => c.GradeId == grade.Id && c.Stage == stage && c.Until > at).GroupBy(c => c.Quantity).ToDictionary(c => c.Key, c => c.First().Before);
        return [.. grade.At(stage).Select(now => later.TryGetValue(now.Quantity, out var before) ? before : now).OfType<WindowView>()];
    }

    private static IEnumerable<WindowChange> Read(TrailRow row)
    {
        using var payload = JsonDocument.Parse(row.Payload);
        foreach (var image in payload.RootElement.GetProperty("rows").Deserialize<List<RowImage>>(RecordsJson.Options)!.Where(image => image is { Table: "GradeWindows", Columns: not null }))
        {
            var now = image.Columns!;
            string? Was(string column) => image.Was!.TryGetValue(column, out var was) ? was : now[column];
            double? Bound(string column) => Was(column) is { } text ? double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture) : null;
            var stage = Enum.Parse<WindowStage>(now[nameof(GradeWindow.Stage)]!);
            var quantity = now[nameof(GradeWindow.Quantity)]!;
            yield return new(
                long.Parse(now[nameof(GradeWindow.GradeId)]!, CultureInfo.InvariantCulture), row.EnteredAt, stage, quantity,
                image.Was is null ? null : new(
                    stage, quantity, Bound(nameof(GradeWindow.Least)), Bound(nameof(GradeWindow.Aim)), Bound(nameof(GradeWindow.Most)), Bound(nameof(GradeWindow.Margin)) ?? 0));
        }
    }
}
