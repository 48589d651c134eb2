using MeltShop.Records.Keeping;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace MeltShop.Records.Reading.Changes;

/// <summary>What the rows of an entry changed of one row and of those that belong to it: its windows, its analysis, its facts.</summary>
internal sealed class RowChanges(RecordsContext db, SeenRow subject)
{
    /// <summary>Who and when is said once for the entry.</summary>
    private static readonly HashSet<string> Origin = [.. typeof(Fact).GetProperties().Select(p => p.Name), nameof(IVersioned.Version)];

    private readonly IRelationalModel model = db.Model.GetRelationalModel();
    private readonly ChangedValues values = new(db);

    public async Task<IReadOnlyList<ValueChange>> Of(IReadOnlyList<RowImage> images, CancellationToken ct)
    {
        var changes = new List<ValueChange>();
        var rows = Belonging(images);
        foreach (var image in images.Where(i => rows.Contains((i.Table, i.Key))))
        {
            var table = Table(image)!;
            var naming = (image.Table, image.Key) == (subject.Table, subject.Key) ? [] : Naming(table);
            var which = new List<object>();
            foreach (var column in naming)
            {
                if (await values.Of(column, Text(image, column), ct) is { } name) which.Add(name);
            }

            foreach (var column in Changed(table, image).Except(naming).Where(c => !Refers(image, c, rows)))
            {
                var (before, after) = (image.Was?.GetValueOrDefault(column.Name), image.Columns?.GetValueOrDefault(column.Name));
                if (before != after) changes.Add(new(table.Name, which, column.Name, await values.Of(column, before, ct), await values.Of(column, after, ct)));
            }
        }

        // A fact that stands behind a value of the row (a price) says the same once more.
        return [.. changes.Where(c => c.Before is not null || !changes.Exists(o => o.Before is not null && o.Column == c.Column && Equals(o.After, c.After)))];
    }

    private static string? Text(RowImage image, IColumn column) => (image.Columns ?? image.Was)!.GetValueOrDefault(column.Name);

    /// <summary>The columns that tell rows of one parent apart.</summary>
    private static IReadOnlyList<IColumn> Naming(ITable table) =>
        [.. table.Indexes.Where(i => i.IsUnique && i.Columns.Any(IsReference)).Take(1).SelectMany(i => i.Columns).Where(c => !IsReference(c))];

    private static bool IsReference(IColumn column) => column.Table.ForeignKeyConstraints.Any(k => k.Columns.Contains(column));

    private static IEnumerable<IColumn> Changed(ITable table, RowImage image) =>
        (image.Columns is not null && image.Was is not null ? image.Was.Keys : (image.Columns ?? image.Was)!.Keys)
        .Select(table.FindColumn).OfType<IColumn>()
        .Where(c => !Origin.Contains(c.Name) && (IsReference(c) || !c.Name.EndsWith("Id", StringComparison.Ordinal))); // a bare number of another row tells nobody anything

    private ITable? Table(RowImage image) => model.FindTable(image.Table, null);

    /// <summary>The row that was looked at, what refers to it, and what refers to that.</summary>
    private HashSet<(string, string)> Belonging(IReadOnlyList<RowImage> images)
    {
        var rows = new HashSet<(string, string)> { (subject.Table, subject.Key) };
        for (var count = 0; count < rows.Count;)
        {
            count = rows.Count;
            foreach (var image in images.Where(i => Table(i) is { } table && table.Columns.Any(c => Refers(i, c, rows)))) rows.Add((image.Table, image.Key));
        }

        return rows;
    }

    private static bool Refers(RowImage image, IColumn column, HashSet<(string, string)> rows) =>
        Text(image, column) is { } key && column.Table.ForeignKeyConstraints.Any(k => k.Columns is [var only] && only == column && rows.Contains((k.PrincipalTable.Name, key)));
}
