using MeltShop.Records.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>Reads instruments with their elements.</summary>
internal static class InstrumentRows
{
    /// <summary>In the order of their codes.</summary>
    public static async Task<IReadOnlyList<InstrumentView>> Load(IQueryable<Instrument> which, CancellationToken ct) =>
        (await which.AsNoTracking().Include(i => i.Elements).ToListAsync(ct)).Select(View).InNaturalOrder(i => i.Code);

    private static InstrumentView View(Instrument instrument) => new(
        instrument.Id, instrument.Version, instrument.Code, instrument.Name, instrument.Kind, instrument.SendsMeanOnly, instrument.FiguresSource, instrument.IsActive,
        [.. instrument.Elements.OrderBy(e => e.Element).Select(e => new InstrumentElementView(e.Element, e.Repeatability, e.GuardFactor))]);
}
