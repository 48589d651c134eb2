namespace MeltShop.Metallurgy.Formulas;

public static partial class Bibliography
{
    /// <summary>Heat content of cast iron.</summary>
    public static Source Doetsch { get; } = new("doetsch", "E. Doetsch, Use of thermochemical data in inductive melting", Standing.Read);

    /// <summary>Melting time of a tonne by power.</summary>
    public static Source MeltingTime { get; } = new("melting-time", "Supplier's page on the time required to melt 1000 kg of cast iron by induction", Standing.Read);

    /// <summary>Losses of crucible furnaces, a 13 t example.</summary>
    public static Source HeatLosses { get; } = new("heat-losses", "Foundry handbook page on heat losses of induction furnaces", Standing.Read);

    /// <summary>Losses of ladles, 4 t and 1 t.</summary>
    public static Source LadleLosses { get; } = new("ladle-losses", "Foundry text on temperature loss of ladles (crucible-type 4 t, drum 1 t)", Standing.Read);

    /// <summary>Thermochemistry from handbook constants.</summary>
    public static Source Thermochemistry { get; } = new("thermochemistry", "Heat balance from handbook heat capacities and heats of solution", Standing.Derived);

    /// <summary>Equilibrium and boiling temperature of the crucible reaction.</summary>
    public static Source Crucible { get; } = new("gleichgewichtstemperatur",
        "Giesserei-Lexikon, entry Gleichgewichtstemperatur (after K. Orths, W. Weis, M. Lampic)", Standing.Read);

    /// <summary>The equilibrium law itself.</summary>
    public static Source CrucibleLaw { get; } = new("crucible-law", "Equilibrium law of the crucible reaction with unit activity coefficients", Standing.Remembered);

    /// <summary>Solubility of carbon.</summary>
    public static Source CarbonSolubility { get; } = new("carbon-solubility", "Textbook regression of carbon solubility in liquid iron", Standing.Remembered);

    /// <summary>Maturity of grey iron.</summary>
    public static Source Maturity { get; } = new("reifegrad", "Giesserei-Praxis, Giesserei-Lexikon, entry Reifegrad", Standing.Read);

    /// <summary>Regressions for a white cup.</summary>
    public static Source WhiteCup { get; } = new("white-cup", "Regressions of carbon and silicon on the two arrests of a tellurium cup", Standing.Remembered);

    /// <summary>Eutectic temperatures.</summary>
    public static Source EutecticLines { get; } = new("eutectic-lines", "Textbook lines of the grey and the white eutectic over silicon", Standing.Remembered);

    /// <summary>Least squares.</summary>
    public static Source LeastSquares { get; } = new("least-squares", "Straight line by least squares, this room", Standing.Derived);

    /// <summary>Carbon and silicon by wall.</summary>
    public static Source Mullins84 { get; } = new("mullins-84", "J. D. Mullins, Sorelmetal Suggestion Sheet 84, table revised 2004", Standing.Read);
}
