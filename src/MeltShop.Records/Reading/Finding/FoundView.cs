namespace MeltShop.Records.Reading.Finding;

public enum FoundKind
{
    Heat,
    Coin,
    Order,
    Furnace,
    Ladle,
    Instrument,
    Material,
    Lot,
    Grade,
    Person,
}

/// <param name="Id">Its own; of a coin its heat's, of a lot its material's.</param>
/// <param name="Code">What it is called by.</param>
/// <param name="More">Its name, the casting of an order, the grade of a heat, the heat of a coin or the material of a lot; empty where there is nothing more to say.</param>
public sealed record Found(FoundKind Kind, long Id, string Code, string More);

/// <param name="Rows">Heats and coins first, the latest first; then orders, the latest due first; then furnaces, ladles, instruments, materials, lots and grades by code; then people by name.</param>
/// <param name="More">True where a kind has more than <see cref="FindPage.Most"/>.</param>
public sealed record FoundView(IReadOnlyList<Found> Rows, bool More);
