using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading;

public static class Facts
{
    /// <summary>More facts of one kind than anybody reads on a page.</summary>
    public const int Most = 500;

    /// <summary>The facts that no later one corrects. The index on what they supersede is unique, so this costs one look-up a row.</summary>
    public static IQueryable<TFact> InForce<TFact>(this RecordsContext db)
        where TFact : Fact
    {
        ArgumentNullException.ThrowIfNull(db);
        return db.Set<TFact>().Where(fact => !db.Set<TFact>().Any(later => later.SupersedesId == fact.Id));
    }

    /// <summary>The fact that a fact goes back to by its corrections: among those of one microsecond it says which was entered first.</summary>
    public static async Task<long> FirstOf<TFact>(this RecordsContext db, TFact fact, CancellationToken ct)
        where TFact : Fact
    {
        ArgumentNullException.ThrowIfNull(db);
        ArgumentNullException.ThrowIfNull(fact);
        var (first, before) = (fact.Id, fact.SupersedesId);
        while (before is { } id)
        {
            first = id;
            before = await db.Set<TFact>().Where(f => f.Id == id).Select(f => f.SupersedesId).SingleAsync(ct);
        }

        return first;
    }

    /// <summary>The facts in the order in which they happened, with their persons, corrected ones included; at most one more than <see cref="Most"/>.</summary>
    internal static Task<List<FactRow<TFact>>> Rows<TFact>(this RecordsContext db, IQueryable<TFact> which, CancellationToken ct)
        where TFact : Fact => db.Rows(which, null, ct);

    /// <inheritdoc cref="Rows{TFact}(RecordsContext, IQueryable{TFact}, CancellationToken)"/>
    /// <param name="known">What had been entered until then; null for all.</param>
    internal static async Task<List<FactRow<TFact>>> Rows<TFact>(
        this RecordsContext db, IQueryable<TFact> which, DateTimeOffset? known, CancellationToken ct)
        where TFact : Fact
    {
        IQueryable<TFact> corrections = db.Set<TFact>();
        if (known is { } until) (which, corrections) = (which.Where(f => f.EnteredAt <= until), corrections.Where(f => f.EnteredAt <= until));
        return await (
            from fact in which.AsNoTracking()
            join person in db.Users on fact.PersonId equals person.Id
            join later in corrections on fact.Id equals later.SupersedesId into laters
            from later in laters.DefaultIfEmpty()
            join corrector in db.Users on later.PersonId equals corrector.Id into correctors
            from corrector in correctors.DefaultIfEmpty()
            orderby fact.ObservedAt, fact.Id
            select new FactRow<TFact>(
                fact, person.DisplayName, later == null ? null : later.Id, later == null ? null : later.EnteredAt, later == null ? null : later.Reason,
                corrector == null ? null : corrector.DisplayName))
            .Take(Most + 1).ToListAsync(ct);
    }
}
