using MeltShop.Records.Keeping;

namespace MeltShop.Records.Writing;

/// <summary>Adds a row to the end of the chain.</summary>
internal static class Trail
{
    public static async Task Append(RecordsContext db, EntryStamp entry, Stamp stamp, string payload, CancellationToken ct)
    {
        var head = await db.LockHead(ct);
        var row = new TrailRow
        {
            Number = head.Number + 1,
            EntryKey = entry.Key,
            Operation = entry.Operation,
            PersonId = entry.PersonId,
            PersonName = entry.PersonName,
            Station = entry.Station,
            EnteredAt = stamp.EnteredAt,
            Payload = payload,
            PreviousHash = head.Hash,
            Hash = "",
        };
        row.Hash = TrailHash.Of(row);
        db.TrailRows.Add(row);
        head.Number = row.Number;
        head.Hash = row.Hash;
        await db.SaveChangesAsync(ct);
    }
}
