using System.Diagnostics.CodeAnalysis;

namespace MeltShop.Metallurgy.Elements;

/// <summary>An element that a foundry laboratory reports, with the figures that the balances need.</summary>
/// <remarks>Iron is among them for its atomic mass, but is never part of an analysis: it is the remainder to 100 %.</remarks>
public sealed partial class Element : IComparable<Element>
{
    private readonly int order;

    private Element(int order, string symbol, double atomicMass, int decimals)
    {
        this.order = order;
        Symbol = symbol;
        AtomicMass = atomicMass;
        Decimals = decimals;
    }

    /// <summary>The IUPAC symbol, for example <c>Si</c>.</summary>
    public string Symbol { get; }

    /// <summary>Standard atomic mass, g/mol. Source: IUPAC, Standard Atomic Weights 2021 (abridged values).</summary>
    public double AtomicMass { get; }

    /// <summary>Decimals customary for mass percent on a foundry report (common practice, no source).</summary>
    public int Decimals { get; }

    /// <summary>All known elements in the order in which a foundry report lists them.</summary>
    public static IReadOnlyList<Element> All => Table.InReportOrder;

    /// <summary>Finds an element by its symbol; upper and lower case matter, as they do in chemistry (<c>Co</c> is not <c>CO</c>).</summary>
    public static bool TryParse(string? symbol, [NotNullWhen(true)] out Element? element)
    {
        element = null;
        return symbol is not null && Table.BySymbol.TryGetValue(symbol, out element);
    }

    /// <summary>Finds an element by its symbol.</summary>
    /// <exception cref="ArgumentException">The symbol is none that is known here.</exception>
    public static Element Parse(string symbol) =>
        TryParse(symbol, out var element) ? element : throw new ArgumentException($"'{symbol}' is no known element symbol.", nameof(symbol));

    /// <summary>Orders elements as a report does: carbon first.</summary>
    public int CompareTo(Element? other) => other is null ? 1 : order.CompareTo(other.order);

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}
