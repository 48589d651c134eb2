namespace MeltShop.Records.Reading.Finding;

public enum FoundKind
{
    Heat,
    Order,
    Furnace,
    Material,
    Grade,
}

/// <param name="Code">What it is called by.</param>
/// <param name="More">Its name, the casting of an order, or the grade of a heat; empty where there is nothing more to say.</param>
public sealed record Found(FoundKind Kind, long Id, string Code, string More);

/// <param name="Rows">Heats first, the latest first; then orders, the latest due first; then furnaces, materials and grades by code.</param>
/// <param name="More">True where a kind has more than <see cref="FindPage.Most"/>.</param>
public sealed record FoundView(IReadOnlyList<Found> Rows, bool More);
