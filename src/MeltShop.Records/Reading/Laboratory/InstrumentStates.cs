using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>Reads instruments with what their control samples say.</summary>
internal static class InstrumentStates
{
    public static async Task<IReadOnlyDictionary<long, InstrumentState>> Load(RecordsContext db, IReadOnlyList<InstrumentView> instruments, CancellationToken ct)
    {
        var states = new Dictionary<long, InstrumentState>();
        if (instruments.Count == 0) return states;
        var references = await ControlRows.References(db, ct);
        foreach (var instrument in instruments)
        {
            var samples = await ControlRows.Load(db, instrument.Id, ct);
            states[instrument.Id] = InstrumentState.Of(instrument, samples, ControlSeries.Of(samples, references, instrument));
        }

        return states;
    }
}
