using MeltShop.Metallurgy;
using MeltShop.Operations.Checking;
using MeltShop.Records;
using MeltShop.Records.Keeping;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Drafts;

/// <summary>
/// Keeps a text that was typed into a field and not handed in, for all who stand at the same subject. No operation: a draft is no
/// record, so it has no entry and is never in the trail. The same text of the same person arriving twice changes nothing.
/// </summary>
public sealed class KeepDraft(IDbContextFactory<RecordsContext> contexts, ChangeNotices notices, TimeProvider clock)
{
    /// <param name="Subject">See <see cref="DraftSubject"/>.</param>
    /// <param name="Field">Path of the field.</param>
    /// <param name="Text">As typed; an empty one takes the draft away.</param>
    /// <param name="Seen">The version that the person saw there when they began to type; null where there was none.</param>
    public sealed record Typed(string Subject, string Field, string Text, Guid? Seen);

    /// <summary>Whoever may enter something that can lie as a draft.</summary>
    public IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Inspector];

    /// <summary>
    /// Keeps it and answers its version, or null where the draft is gone. A text of somebody else that the person had not seen stays
    /// as it is: <c>draft.other</c> says whose and what.
    /// </summary>
    public async Task<Outcome<Guid?>> Run(Acting acting, Typed typed, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(acting);
        ArgumentNullException.ThrowIfNull(typed);
        if (!acting.HoldsAny(Roles)) return Refused(new Finding("", "right.missing", string.Join(", ", Roles)));
        var fields = new FieldCheck();
        if (!DraftSubject.IsOne(typed.Subject)) fields.Add("subject", "draft.subject");
        fields.Text("field", typed.Field, 100);
        fields.OptionalText("text", typed.Text, 400);
        if (fields.Findings.Count > 0) return Outcome<Guid?>.Refused(fields.Findings);

        try
        {
            return await Keep(acting, typed, cancellation);
        }
        catch (DbUpdateException fault) when (fault is DbUpdateConcurrencyException || UniqueViolation.TakenIn(fault) is not null)
        {
            return await Keep(acting, typed, cancellation); // somebody was faster by a moment: now their row is there to be seen
        }
    }

    private async Task<Outcome<Guid?>> Keep(Acting acting, Typed typed, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        await using var transaction = await db.Database.BeginTransactionAsync(cancellation);
        var draft = await db.Drafts.SingleOrDefaultAsync(d => d.Subject == typed.Subject && d.Field == typed.Field, cancellation);
        if (draft is null ? typed.Text.Length == 0 : draft.Text == typed.Text) return Outcome<Guid?>.Of(draft?.Version);
        if (draft is not null && draft.PersonId != acting.PersonId && draft.Version != typed.Seen)
        {
            var name = await db.Users.Where(p => p.Id == draft.PersonId).Select(p => p.DisplayName).SingleAsync(cancellation);
            return Refused(new Finding(typed.Field, "draft.other", name, draft.Text, typed.Text));
        }

        if (draft is null) db.Add(draft = New(acting, typed));
        else if (typed.Text.Length == 0) db.Remove(draft);
        else (draft.Text, draft.PersonId, draft.ChangedAt) = (typed.Text, acting.PersonId, clock.Now());
        await db.SaveChangesAsync(cancellation);
        await notices.Commit(db, [new(ChangeKind.Draft, draft.Id, draft.Version)], cancellation);
        return Outcome<Guid?>.Of(typed.Text.Length == 0 ? null : draft.Version);
    }

    private Draft New(Acting acting, Typed typed) => new()
    {
        Subject = typed.Subject,
        Field = typed.Field,
        Text = typed.Text,
        PersonId = acting.PersonId,
        ChangedAt = clock.Now(),
    };

    private static Outcome<Guid?> Refused(Finding finding) => Outcome<Guid?>.Refused([finding]);
}
