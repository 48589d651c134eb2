using MeltShop.Metallurgy;
using MeltShop.Operations.Checking;
using MeltShop.Records.Keeping;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations;

/// <summary>
/// One thing that a person does. Who may do it and what is wrong with its fields are checked here, before anything is written;
/// then all of it is written in one transaction with its entry and its trail row, or none of it.
/// </summary>
public abstract class Operation<TCommand, TResult>(Recorder recorder, TimeProvider time)
    where TCommand : Command
{
    /// <summary>How far a station's clock may be ahead of ours.</summary>
    public static readonly TimeSpan ClockTolerance = TimeSpan.FromMinutes(5);

    /// <summary>The roles that may do it; never empty.</summary>
    public abstract IReadOnlyList<string> Roles { get; }

    /// <summary>Does it, once for each entry key; the second arrival gets the first result.</summary>
    public async Task<Outcome<TResult>> Run(Acting acting, TCommand command, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(acting);
        ArgumentNullException.ThrowIfNull(command);
        var name = GetType().Name;
        if (!acting.HoldsAny(Roles)) return Outcome<TResult>.Refused([new Finding("", "right.missing", string.Join(", ", Roles))]);

        var fields = new FieldCheck();
        if (command.EntryKey == Guid.Empty) fields.Add("entryKey", "entryKey.missing");
        if (command.ObservedAt > time.GetUtcNow() + ClockTolerance) fields.Add("observedAt", "time.future", command.ObservedAt);
        Check(command, fields);
        if (fields.Findings.Count > 0) return Outcome<TResult>.Refused(fields.Findings);

        var ready = await Ready(command, cancellation);
        var entry = new EntryStamp(command.EntryKey, name, acting.PersonId, acting.PersonName, acting.Station, command.ObservedAt, command);
        var recorded = await recorder.Record<TResult>(
            entry, (db, stamp, inner) => Take(new Writing(db, stamp, acting), ready, inner), cancellation);
        return recorded.Findings.Count > 0 ? Outcome<TResult>.Refused(recorded.Findings) : Outcome<TResult>.Of(recorded.Value!);
    }

    /// <summary>The drafts go in the same transaction: what is refused leaves them where they are.</summary>
    private async Task<Written<TResult>> Take(Writing writing, TCommand command, CancellationToken cancellation)
    {
        var gone = command.DraftSubject is { } subject ? await writing.Db.Drafts.Where(d => d.Subject == subject).ExecuteDeleteAsync(cancellation) : 0;
        var written = await Write(writing, command, cancellation);
        return gone > 0 ? written.And(new(ChangeKind.Draft, 0)) : written;
    }

    /// <summary>What can be said of the fields without looking into the records.</summary>
    protected abstract void Check(TCommand command, FieldCheck fields);

    /// <summary>
    /// Adds to the command what takes long to reckon, before the transaction: on SQLite every other writer waits for one. What it
    /// adds is no part of what was asked, so it does not go into the trail.
    /// </summary>
    protected virtual Task<TCommand> Ready(TCommand command, CancellationToken cancellation) => Task.FromResult(command);

    /// <summary>A refusal for one reason.</summary>
    protected static Written<TResult> Refuse(string path, string code, params object[] arguments) =>
        Written<TResult>.Refused(new Finding(path, code, arguments));

    /// <summary>A refusal because somebody else was faster: the row stands in another version than the one that was seen.</summary>
    protected static Written<TResult> Stale<TRow>(Writing writing, TRow row, Guid seen)
        where TRow : class, IVersioned
    {
        ArgumentNullException.ThrowIfNull(writing);
        return Written<TResult>.Refused(SeenRow.Of(writing.Db, row, seen).Outdated("version"));
    }

    /// <summary>The same where the row says no version, or the person saw none: what was changed is not told.</summary>
    protected static Written<TResult> Stale() => Refuse("version", SeenRow.Code);

    /// <summary>It is done. The rows that it wrote are announced by themselves (<see cref="ChangedThings"/>); a notice here says what changed with them.</summary>
    protected static Written<TResult> Done(TResult result, params ChangeNotice[] notices) => Written<TResult>.Of(result, notices);

    /// <summary>Checks the state that the records are in and writes; after a refusal nothing of it stays.</summary>
    protected abstract Task<Written<TResult>> Write(Writing writing, TCommand command, CancellationToken cancellation);
}
