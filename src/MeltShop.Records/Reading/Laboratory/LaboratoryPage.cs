using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>The laboratory at a glance.</summary>
/// <param name="Coins">On their way, of all heats, the first taken first.</param>
/// <param name="More">Of which of them there are more than are listed.</param>
public sealed record LaboratoryView(
    IReadOnlyList<InstrumentState> Instruments, IReadOnlyList<ReferenceView> References, IReadOnlyList<WaitingCoin> Coins, LaboratoryMore More);

/// <summary>Whether there are more than are listed.</summary>
public sealed record LaboratoryMore(bool Instruments, bool References, bool Coins);

/// <param name="HeatNumber">Of its heat.</param>
public sealed record WaitingCoin(CoinView Coin, string HeatNumber);

/// <summary>Reads what the page of the laboratory shows.</summary>
public sealed class LaboratoryPage(IDbContextFactory<RecordsContext> contexts)
{
    public async Task<LaboratoryView> Load(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var instruments = await InstrumentRows.Load(db.Instruments, ct);
        var references = await ControlRows.References(db, ct);
        var waiting = await CoinRows.Load(db, CoinRows.Waiting(db), ct);
        var more = new LaboratoryMore(instruments.Count > Facts.Most, references.Count > Facts.Most, waiting.Count > Facts.Most);
        instruments = [.. instruments.Take(Facts.Most)];
        var states = await InstrumentStates.Load(db, instruments, ct);
        var coins = waiting.Take(Facts.Most).ToList();
        var heats = coins.Select(c => c.HeatId).Distinct().ToList();
        var numbers = await db.Heats.Where(h => heats.Contains(h.Id)).ToDictionaryAsync(h => h.Id, h => h.Number, ct);
        return new(
            [.. instruments.Select(i => states[i.Id])], [.. references.Take(Facts.Most)], [.. coins.Select(c => new WaitingCoin(c, numbers[c.HeatId]))], more);
    }
}
