using MeltShop.Records.Keeping;

namespace MeltShop.Records.Reading;

internal static class Facts
{
    /// <summary>The facts that no later one corrects. The index on what they supersede is unique, so this costs one look-up a row.</summary>
    public static IQueryable<TFact> InForce<TFact>(this RecordsContext db)
        where TFact : Fact =>
        db.Set<TFact>().Where(fact => !db.Set<TFact>().Any(later => later.SupersedesId == fact.Id));
}
