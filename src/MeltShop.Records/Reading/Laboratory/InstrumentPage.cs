using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>An instrument with its checks.</summary>
/// <param name="Doubted">Heats that it measured in the last stretch that a bad check throws doubt on, the latest first; empty where there is none.</param>
/// <param name="IsMore">There are more of them than are listed.</param>
public sealed record InstrumentDetailView(
    InstrumentState State, IReadOnlyList<ControlSampleView> Samples, IReadOnlyList<ReferenceView> References, IReadOnlyList<MeasuredHeat> Doubted, bool IsMore);

/// <summary>Reads what the page of an instrument shows.</summary>
public sealed class InstrumentPage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Null where there is no such instrument.</summary>
    public async Task<InstrumentDetailView?> Load(long id, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        if ((await InstrumentRows.Load(db.Instruments.Where(i => i.Id == id), ct)).SingleOrDefault() is not { } instrument) return null;
        var references = await ControlRows.References(db, ct);
        IReadOnlyList<ControlSampleView> samples = [.. (await ControlRows.Load(db, [id], ct))[id]];
        var state = InstrumentState.Of(instrument, samples, ControlSeries.Of(samples, references, instrument));
        var doubted = state.Doubt is { } doubt ? await MeasuredHeats.Load(db, id, doubt, ct) : [];
        return new(state, samples, references, [.. doubted.Take(Facts.Most)], doubted.Count > Facts.Most);
    }
}
