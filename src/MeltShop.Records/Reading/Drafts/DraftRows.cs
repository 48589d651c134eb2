using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Drafts;

/// <summary>What lies typed at a subject, by whomever.</summary>
public sealed class DraftRows(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Every draft of a subject, by field.</summary>
    public async Task<IReadOnlyList<DraftView>> Load(string subject, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var drafts = from draft in db.Drafts.AsNoTracking()
                     join person in db.Users on draft.PersonId equals person.Id
                     where draft.Subject == subject
                     orderby draft.Field
                     select new DraftView(draft.Field, draft.Text, draft.PersonId, person.DisplayName, draft.ChangedAt, draft.Version);
        return await drafts.ToListAsync(ct);
    }
}
