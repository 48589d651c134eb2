namespace MeltShop.Metallurgy.Elements;

#pragma warning disable CS1591 // each member is the element that its symbol names
public sealed partial class Element
{
    public static Element Fe => Table.BySymbol["Fe"];
    public static Element C => Table.BySymbol["C"];
    public static Element Si => Table.BySymbol["Si"];
    public static Element Mn => Table.BySymbol["Mn"];
    public static Element P => Table.BySymbol["P"];
    public static Element S => Table.BySymbol["S"];
    public static Element Cr => Table.BySymbol["Cr"];
    public static Element Cu => Table.BySymbol["Cu"];
    public static Element Ni => Table.BySymbol["Ni"];
    public static Element Mo => Table.BySymbol["Mo"];
    public static Element Mg => Table.BySymbol["Mg"];
    public static Element Sn => Table.BySymbol["Sn"];
    public static Element Sb => Table.BySymbol["Sb"];
    public static Element As => Table.BySymbol["As"];
    public static Element Pb => Table.BySymbol["Pb"];
    public static Element Bi => Table.BySymbol["Bi"];
    public static Element Ti => Table.BySymbol["Ti"];
    public static Element Al => Table.BySymbol["Al"];
    public static Element V => Table.BySymbol["V"];
    public static Element Ce => Table.BySymbol["Ce"];
    public static Element La => Table.BySymbol["La"];
    public static Element N => Table.BySymbol["N"];

    private static class Table
    {
        /// <summary>Symbol, atomic mass in g/mol, customary decimals. Four decimals for what acts in thousandths of a percent.</summary>
        internal static readonly IReadOnlyList<Element> InReportOrder = Number(
        [
            ("C", 12.011, 2), ("Si", 28.085, 2), ("Mn", 54.938, 2), ("P", 30.974, 3), ("S", 32.06, 3),
            ("Cr", 51.996, 2), ("Cu", 63.546, 2), ("Ni", 58.693, 2), ("Mo", 95.95, 2), ("Mg", 24.305, 3),
            ("Sn", 118.71, 3), ("Ti", 47.867, 3), ("Al", 26.982, 3), ("V", 50.942, 3), ("Ce", 140.12, 3),
            ("La", 138.91, 3), ("Nb", 92.906, 3), ("W", 183.84, 3), ("Co", 58.933, 3), ("As", 74.922, 3),
            ("Zr", 91.224, 3), ("Ca", 40.078, 4), ("Ba", 137.33, 4), ("Sr", 87.62, 4), ("Sb", 121.76, 4),
            ("Pb", 207.2, 4), ("Bi", 208.98, 4), ("B", 10.81, 4), ("Te", 127.60, 4), ("Se", 78.971, 4),
            ("Zn", 65.38, 4), ("Cd", 112.41, 4), ("N", 14.007, 4), ("O", 15.999, 4), ("H", 1.008, 5),
            ("Nd", 144.24, 4), ("Pr", 140.91, 4), ("Y", 88.906, 4), ("Ta", 180.95, 3), ("Hf", 178.49, 4),
            ("Ag", 107.87, 4), ("Na", 22.990, 4), ("K", 39.098, 4), ("Li", 6.94, 4), ("Be", 9.0122, 4),
            ("In", 114.82, 4), ("Ga", 69.723, 4), ("Ge", 72.630, 4), ("Fe", 55.845, 2),
        ]);

        internal static readonly Dictionary<string, Element> BySymbol = InReportOrder.ToDictionary(e => e.Symbol, StringComparer.Ordinal);

        private static Element[] Number((string Symbol, double AtomicMass, int Decimals)[] rows) =>
            [.. rows.Select((row, order) => new Element(order, row.Symbol, row.AtomicMass, row.Decimals))];
    }
}
