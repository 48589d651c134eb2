using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>An instrument with its checks.</summary>
/// <param name="Doubted">The last times that a bad check throws doubt on, the latest first; one that ended without a sample of a heat is left out.</param>
public sealed record InstrumentDetailView(
    InstrumentState State, IReadOnlyList<ControlSampleView> Samples, IReadOnlyList<ReferenceView> References, IReadOnlyList<DoubtedHeats> Doubted)
{
    /// <summary>There were times of doubt before those.</summary>
    public bool IsMore { get; init; }
}

/// <summary>What an instrument measured while it was in doubt.</summary>
/// <param name="Heats">The latest first.</param>
/// <param name="IsMore">There are more of them than are listed.</param>
public sealed record DoubtedHeats(DoubtedTime Time, IReadOnlyList<MeasuredHeat> Heats, bool IsMore);

/// <summary>Reads what the page of an instrument shows.</summary>
public sealed class InstrumentPage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Times of doubt that a page lists; the recall finds those before.</summary>
    private const int MostDoubts = 10;

    /// <summary>Null where there is no such instrument.</summary>
    public async Task<InstrumentDetailView?> Load(long id, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        if ((await InstrumentRows.Load(db.Instruments.Where(i => i.Id == id), ct)).SingleOrDefault() is not { } instrument) return null;
        var references = await ControlRows.References(db, ct);
        IReadOnlyList<ControlSampleView> samples = [.. (await ControlRows.Load(db, [id], ct))[id]];
        var state = InstrumentState.Of(instrument, samples, ControlSeries.Of(samples, references, instrument));
        var doubted = new List<DoubtedHeats>();
        foreach (var time in state.Doubts.Take(MostDoubts))
        {
            var heats = await MeasuredHeats.Load(db, id, time, ct);
            if (heats.Count > 0 || time.Until is null) doubted.Add(new(time, [.. heats.Take(Facts.Most)], heats.Count > Facts.Most));
        }

        return new(state, samples, references, doubted) { IsMore = state.Doubts.Count > MostDoubts };
    }
}
