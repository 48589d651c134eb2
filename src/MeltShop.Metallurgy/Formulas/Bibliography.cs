namespace MeltShop.Metallurgy.Formulas;

/// <summary>Every source that this room names, once.</summary>
public static partial class Bibliography
{
    /// <summary>Carbon equivalents printed beside compositions.</summary>
    public static Source Radzikowska { get; } = new("radzikowska",
        "J. Radzikowska, G. Vander Voort, Tech-Note on the metallography of cast irons, table of compositions", Standing.Read);

    /// <summary>Carbon equivalent and saturation judged together.</summary>
    public static Source Du { get; } = new("du", "Du Xiling, Du Lei, Casting Questions and Answers, 2nd ed.", Standing.Read);

    /// <summary>Liquidus of hypoeutectic cast iron.</summary>
    public static Source Heine { get; } = new("heine", "R. W. Heine, The Fe-C-Si Solidification Diagram for Cast Irons, AFS Transactions, 1986", Standing.Read);

    /// <summary>Liquidus regression with alloying elements.</summary>
    public static Source Koriyama { get; } = new("koriyama",
        "S. Koriyama, T. Kanno, Y. Iwami, H. Kang, International Journal of Metalcasting, 2020", Standing.Read);

    /// <summary>Degree of saturation, eutectic carbon, normal strength.</summary>
    public static Source Saturation { get; } = new("saettigungsgrad", "Giesserei-Praxis, Giesserei-Lexikon, entry Sättigungsgrad", Standing.Read);

    /// <summary>Pearlite factor and ferrite share.</summary>
    public static Source Pearlite { get; } = new("perlitwertzahl", "Giesserei-Lexikon, entry Perlitwertzahl (after T. Thielmann)", Standing.Read);

    /// <summary>Trace factor.</summary>
    public static Source Trace { get; } = new("spurenbewertungszahl", "Giesserei-Lexikon, entry Spurenbewertungszahl (after T. Thielmann)", Standing.Read);

    /// <summary>Manganese needed for sulphur.</summary>
    public static Source ManganeseSulphur { get; } = new("goodrich",
        "G. M. Goodrich, T. G. Oakwood, R. B. Gundlach, Manganese and Sulfur Effects in Gray Cast Iron, AFS Transactions 03-072, 2003", Standing.Read);

    /// <summary>Atomic masses.</summary>
    public static Source Iupac { get; } = new("iupac", "IUPAC, Standard Atomic Weights 2021, abridged values", Standing.Read);

    /// <summary>Carbon equivalent of German and European texts.</summary>
    public static Source GermanForm { get; } = new("german-form", "Carbon equivalent of German and European textbooks", Standing.Remembered);

    /// <summary>Carbon equivalent of Chinese textbooks.</summary>
    public static Source ChineseForm { get; } = new("chinese-form", "Carbon equivalent rounded as in Chinese textbooks", Standing.Remembered);

    /// <summary>General formula of the magnesium addition.</summary>
    public static Source Cabanne { get; } = new("cabanne",
        "P.-M. Cabanne, Control of residual magnesium in ductile iron, S.G. Iron Conclave, Mumbai, 2011", Standing.Read);

    /// <summary>Magnesium yield with the sulphur bound counted in.</summary>
    public static Source MagnesiumYield { get; } = new("magnesium-yield", "Giesserei-Lexikon, entry Magnesium yield", Standing.Read);

    /// <summary>Fade of magnesium and loss at each re-ladling.</summary>
    public static Source Fade { get; } = new("magnesiumabklingen",
        "Giesserei-Lexikon, entry Magnesiumabklingen (re-ladling after Henych and Regitz)", Standing.Read);

    /// <summary>The mass balance of this room.</summary>
    public static Source Balance { get; } = new("balance", "Mass balance of the alloy, the sulphide and the iron, this room", Standing.Derived);

    /// <summary>What everybody in the trade knows.</summary>
    public static Source Practice { get; } = new("practice", "Foundry practice", Standing.Practice);

    /// <summary>The addition formula of a supplier, with two printed results.</summary>
    public static Source SupplierAddition { get; } = new("supplier-addition", "Supplier's question-and-answer page on silicon metal added to a bath", Standing.Read);

    /// <summary>Grubbs' test.</summary>
    public static Source Grubbs { get; } = new("grubbs",
        "F. E. Grubbs, G. Beck, Extension of sample sizes and percentage points for significance tests of outlying observations, Technometrics 14, 1972",
        Standing.Remembered);

    /// <summary>Acceptance of replicate results.</summary>
    public static Source Iso5725 { get; } = new("iso-5725-6", "ISO 5725-6, Accuracy of measurement methods and results, part 6, 1994", Standing.Remembered);
}
