using System.Runtime.CompilerServices;
using MeltShop.Records.Exchange;
using MeltShop.Records.Keeping;

namespace MeltShop.Records.Writing;

/// <summary>The rows of the trail as they are stored, in their order.</summary>
internal static class StoredTrail
{
    /// <summary>Null for a row with a value of a type that this program never writes.</summary>
    public static async IAsyncEnumerable<TrailRow?> Read(RecordsContext db, [EnumeratorCancellation] CancellationToken ct)
    {
        var table = StoredTables.Of(db).Single(t => t.Name == nameof(RecordsContext.TrailRows));
        await foreach (var row in StoredRows.Read(db, table, ct))
        {
            var values = table.Columns.Zip(row).ToDictionary(c => c.First.Name, c => c.Second);
            yield return values.Values.Any(v => v is StoredValue.Unreadable) ? null : new TrailRow
            {
                Number = (long)values[nameof(TrailRow.Number)]!,
                EntryKey = (Guid)values[nameof(TrailRow.EntryKey)]!,
                Operation = (string)values[nameof(TrailRow.Operation)]!,
                PersonId = (long)values[nameof(TrailRow.PersonId)]!,
                PersonName = (string)values[nameof(TrailRow.PersonName)]!,
                Station = (string)values[nameof(TrailRow.Station)]!,
                EnteredAt = (DateTime)values[nameof(TrailRow.EnteredAt)]!,
                Payload = (string)values[nameof(TrailRow.Payload)]!,
                PreviousHash = (string)values[nameof(TrailRow.PreviousHash)]!,
                Hash = (string)values[nameof(TrailRow.Hash)]!,
            };
        }
    }
}
