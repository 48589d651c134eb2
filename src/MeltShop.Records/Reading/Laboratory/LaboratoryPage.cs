using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>The laboratory at a glance.</summary>
/// <param name="Coins">On their way, of all heats, the first taken first.</param>
public sealed record LaboratoryView(IReadOnlyList<InstrumentState> Instruments, IReadOnlyList<ReferenceView> References, IReadOnlyList<WaitingCoin> Coins);

/// <param name="HeatNumber">Of its heat.</param>
public sealed record WaitingCoin(CoinView Coin, string HeatNumber);

/// <summary>Reads what the page of the laboratory shows.</summary>
public sealed class LaboratoryPage(IDbContextFactory<RecordsContext> contexts)
{
    public async Task<LaboratoryView> Load(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var instruments = await InstrumentRows.Load(db.Instruments, ct);
        var states = await InstrumentStates.Load(db, instruments, ct);
        var coins = await CoinRows.Load(db, CoinRows.Waiting(db), ct);
        var heats = coins.Select(c => c.HeatId).Distinct().ToList();
        var numbers = await db.Heats.Where(h => heats.Contains(h.Id)).ToDictionaryAsync(h => h.Id, h => h.Number, ct);
        return new(
            [.. instruments.Select(i => states[i.Id])], await ControlRows.References(db, ct), [.. coins.Select(c => new WaitingCoin(c, numbers[c.HeatId]))]);
    }
}
