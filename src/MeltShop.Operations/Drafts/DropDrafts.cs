using MeltShop.Metallurgy;
using MeltShop.Records;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Drafts;

/// <summary>Throws away all that was typed at a subject and not handed in: a coin that fell apart, a wrong heat. Answers how many texts went.</summary>
public sealed class DropDrafts(IDbContextFactory<RecordsContext> contexts, ChangeNotices notices, KeepDraft keeping)
{
    public async Task<Outcome<int>> Run(Acting acting, string subject, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(acting);
        if (!acting.HoldsAny(keeping.Roles)) return Outcome<int>.Refused([new Finding("", "right.missing", string.Join(", ", keeping.Roles))]);
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        await using var transaction = await db.Database.BeginTransactionAsync(cancellation);
        var dropped = await db.Drafts.Where(d => d.Subject == subject).ExecuteDeleteAsync(cancellation);
        await notices.Commit(db, [new(ChangeKind.Draft, 0)], cancellation);
        return Outcome<int>.Of(dropped);
    }
}
