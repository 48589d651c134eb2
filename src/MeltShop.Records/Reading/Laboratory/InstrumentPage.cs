using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>An instrument with its checks.</summary>
/// <param name="Doubted">Heats since the last good check, where the last one was not good; empty otherwise.</param>
public sealed record InstrumentDetailView(
    InstrumentState State, IReadOnlyList<ControlSampleView> Samples, IReadOnlyList<ReferenceView> References, IReadOnlyList<MeasuredHeat> Doubted);

/// <summary>Reads what the page of an instrument shows.</summary>
public sealed class InstrumentPage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Null where there is no such instrument.</summary>
    public async Task<InstrumentDetailView?> Load(long id, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        if ((await InstrumentRows.Load(db.Instruments.Where(i => i.Id == id), ct)).SingleOrDefault() is not { } instrument) return null;
        var references = await ControlRows.References(db, ct);
        var samples = await ControlRows.Load(db, id, ct);
        var state = InstrumentState.Of(instrument, samples, ControlSeries.Of(samples, references, instrument));
        var doubted = state.Last is { IsGood: false, IsJudged: true }
            ? await MeasuredHeats.Load(db, id, state.LastGood?.At ?? DateTimeOffset.MinValue, ct) : [];
        return new(state, samples, references, doubted);
    }
}
