using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Recall;

/// <summary>From something suspect to the castings that it may be in.</summary>
public sealed class RecallPage(IDbContextFactory<RecordsContext> contexts)
{
    public async Task<RecallView> Load(RecallQuestion question, CancellationToken ct = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await RecallStarts.Of(db, question, ct) is { } starts
            ? await RecallList.Of(db, starts, Math.Clamp(question.Heels, 0, RecallQuestion.MostHeels), ct) : RecallView.Unknown;
    }
}
