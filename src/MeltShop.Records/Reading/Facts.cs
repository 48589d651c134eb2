using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading;

internal static class Facts
{
    /// <summary>More facts of one kind than anybody reads on a page.</summary>
    public const int Most = 500;

    /// <summary>The facts that no later one corrects. The index on what they supersede is unique, so this costs one look-up a row.</summary>
    public static IQueryable<TFact> InForce<TFact>(this RecordsContext db)
        where TFact : Fact =>
        db.Set<TFact>().Where(fact => !db.Set<TFact>().Any(later => later.SupersedesId == fact.Id));

    /// <summary>The facts in the order in which they happened, with their persons, corrected ones included; at most one more than <see cref="Most"/>.</summary>
    public static async Task<List<FactRow<TFact>>> Rows<TFact>(this RecordsContext db, IQueryable<TFact> which, CancellationToken ct)
        where TFact : Fact =>
        await (
            from fact in which.AsNoTracking()
            join person in db.Users on fact.PersonId equals person.Id
            orderby fact.ObservedAt, fact.Id
            select new FactRow<TFact>(fact, person.DisplayName, db.Set<TFact>().Any(later => later.SupersedesId == fact.Id)))
        .Take(Most + 1).ToListAsync(ct);
}
