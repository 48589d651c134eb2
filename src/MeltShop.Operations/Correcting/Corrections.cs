using MeltShop.Metallurgy;
using MeltShop.Operations.Checking;
using MeltShop.Records;
using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>What all corrections share: a reason, and a fact that nobody else has corrected meanwhile.</summary>
internal static class Corrections
{
    /// <summary>A correction says why; what it says of the time lies not ahead.</summary>
    public static void Correction(this FieldCheck fields, Command command, string reason, DateTimeOffset? happenedAt)
    {
        fields.Text("reason", reason, 500);
        if (happenedAt > command.ObservedAt) fields.Add("happenedAt", "time.future", happenedAt.Value);
    }

    /// <summary>
    /// What stands against correcting a fact: <c>fact.unknown</c>, or <c>fact.corrected</c> with who corrected it meanwhile, why and when.
    /// </summary>
    public static async Task<Finding?> Standing<TFact>(this RecordsContext db, TFact? fact, string path, CancellationToken cancellation)
        where TFact : Fact
    {
        if (fact is null) return new Finding(path, "fact.unknown");
        var later = await db.Set<TFact>().AsNoTracking().SingleOrDefaultAsync(f => f.SupersedesId == fact.Id, cancellation);
        if (later is null) return null;
        var who = await db.Users.Where(p => p.Id == later.PersonId).Select(p => p.DisplayName).SingleAsync(cancellation);
        return new Finding(path, "fact.corrected", who, later.EnteredAt, later.Reason ?? "");
    }
}
