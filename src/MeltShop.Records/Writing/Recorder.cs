using MeltShop.Metallurgy;
using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace MeltShop.Records.Writing;

/// <summary>
/// The one way to write. In one transaction: the entry key is claimed, the write is done, the trail gets its row, the trail's head
/// is locked last. The second arrival of an entry key does nothing and returns the first result, also when both come at once.
/// </summary>
public sealed class Recorder(IDbContextFactory<RecordsContext> contexts, ChangeNotices notices, TimeProvider clock)
{
    private const int Attempts = 4;

    /// <param name="entry">Who asks for what.</param>
    /// <param name="write">
    /// Changes the context's rows; may save where it needs an id. It is called again with a fresh context after a deadlock, or where
    /// somebody else was faster at a row, so it touches nothing else.
    /// </param>
    /// <param name="ct">Given up before the commit, nothing is kept.</param>
    /// <returns>
    /// The result or findings: those of the write, <c>version.stale</c> where somebody else changed a row after its editor saw it,
    /// <c>unique.taken</c> where a value exists already, <c>entryKey.used</c> where the key belongs to another operation.
    /// </returns>
    public async Task<Recorded<TResult>> Record<TResult>(
        EntryStamp entry, Func<RecordsContext, Stamp, CancellationToken, Task<Written<TResult>>> write, CancellationToken ct = default)
    {
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(write);
        if (entry.Key == Guid.Empty) throw new ArgumentException("An entry key is made by the client and never empty.", nameof(entry));
        for (var attempt = 1; ; attempt++)
        {
            await using var db = await contexts.CreateDbContextAsync(ct);
            try
            {
                return await Once(db, entry, write, ct);
            }
            catch (Exception e) when (attempt < Attempts && (IsDeadlock(e) || e is DbUpdateConcurrencyException))
            {
                // The whole transaction is undone, and the other one is through by now. A write that names the version which its editor
                // saw is refused the next time too; one that only adds to what others add to goes through.
            }
            catch (DbUpdateConcurrencyException e)
            {
                return Refused<TResult>(SeenRow.Of(e).Outdated(""));
            }
            catch (DbUpdateException e) when (attempt < Attempts && UniqueViolation.TakenIn(e) is not null)
            {
                // Somebody else was faster at what there is one of: the next time the write finds it, and says so at the field and in its own words.
            }
            catch (DbUpdateException e) when (UniqueViolation.TakenIn(e) is { } taken)
            {
                return Refused<TResult>(new Finding(UniqueViolation.Path(db.Model, taken), "unique.taken"));
            }
        }
    }

    private static Recorded<TResult> Refused<TResult>(params IReadOnlyList<Finding> findings) => new(default, findings, false);

    private static bool IsDeadlock(Exception exception) =>
        (exception as PostgresException ?? exception.InnerException as PostgresException)?.SqlState == PostgresErrorCodes.DeadlockDetected;

    private async Task<Recorded<TResult>> Once<TResult>(
        RecordsContext db, EntryStamp entry, Func<RecordsContext, Stamp, CancellationToken, Task<Written<TResult>>> write, CancellationToken ct)
    {
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        if (await FirstResult<TResult>(db, entry, ct) is { } first) return first;

        var stamp = new Stamp(entry.Key, entry.PersonId, entry.ObservedAt.Cut(), clock.Now());
        await Claim(db, entry, stamp, ct);
        var images = new RowImages(db);
        var written = await write(db, stamp, ct);
        if (written.Findings.Count > 0) return Refused<TResult>(written.Findings);

        await db.SaveChangesAsync(ct);
        var result = RecordsJson.Text(written.Value);
        await db.Entries.Where(e => e.Key == entry.Key).ExecuteUpdateAsync(e => e.SetProperty(x => x.Result, result), ct);
        if (!db.Bulk.IsEmpty) await db.PackQuickly(ct);
        await Trail.Append(db, entry, stamp, RecordsJson.Payload(entry.Payload, result, images.Rows, db.Bulk), ct);
        await notices.Commit(db, ChangedThings.Of(written.Notices, images.Rows), ct);
        return new(written.Value, [], false);
    }

    /// <summary>The key is inserted before anything else, so that a second arrival waits here and not on a row that the first changed.</summary>
    private static async Task Claim(RecordsContext db, EntryStamp entry, Stamp stamp, CancellationToken ct)
    {
        db.Entries.Add(new Entry
        {
            Key = entry.Key,
            Operation = entry.Operation,
            PersonId = entry.PersonId,
            EnteredAt = stamp.EnteredAt,
            Result = "",
        });
        await db.SaveChangesAsync(ct);
    }

    private static async Task<Recorded<TResult>?> FirstResult<TResult>(RecordsContext db, EntryStamp entry, CancellationToken ct)
    {
        var first = await db.Entries.AsNoTracking().SingleOrDefaultAsync(e => e.Key == entry.Key, ct);
        if (first is null) return null;
        return first.Operation == entry.Operation
            ? new(RecordsJson.Value<TResult>(first.Result), [], true)
            : Refused<TResult>(new Finding("entryKey", "entryKey.used", first.Operation));
    }
}
