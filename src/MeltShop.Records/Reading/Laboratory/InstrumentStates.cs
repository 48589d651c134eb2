using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>Reads instruments with what their control samples say: the same statements for one instrument or many.</summary>
internal static class InstrumentStates
{
    public static async Task<IReadOnlyDictionary<long, InstrumentState>> Load(RecordsContext db, IReadOnlyList<InstrumentView> instruments, CancellationToken ct)
    {
        if (instruments.Count == 0) return new Dictionary<long, InstrumentState>();
        var references = await ControlRows.References(db, ct);
        var samples = await ControlRows.Load(db, [.. instruments.Select(i => i.Id)], ct);
        return instruments.ToDictionary(
            i => i.Id, i => InstrumentState.Of(i, [.. samples[i.Id]], ControlSeries.Of([.. samples[i.Id]], references, i)));
    }
}
