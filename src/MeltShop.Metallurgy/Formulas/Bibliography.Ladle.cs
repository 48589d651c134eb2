namespace MeltShop.Metallurgy.Formulas;

public static partial class Bibliography
{
    /// <summary>Treatment processes and their recoveries.</summary>
    public static Source Elkem9 { get; } = new("elkem-9", "Elkem, Technical Information 9, magnesium treatment processes", Standing.Read);

    /// <summary>Tundish covers.</summary>
    public static Source Elkem10 { get; } = new("elkem-10", "Elkem, Technical Information 10, tundish cover ladle", Standing.Read);

    /// <summary>Addition of inoculants.</summary>
    public static Source Elkem4 { get; } = new("elkem-4", "Elkem, Technical Information 4, inoculation", Standing.Read);

    /// <summary>Late and in-mould inoculation as customary.</summary>
    public static Source InoculationPractice { get; } = new("inoculation-practice", "Rates of late inoculation", Standing.Remembered);

    /// <summary>Residual magnesium.</summary>
    public static Source MagnesiumResidual { get; } = new("magnesiumrestgehalt", "Giesserei-Praxis, Giesserei-Lexikon, entry Magnesiumrestgehalt", Standing.Read);

    /// <summary>Nodule counts over section.</summary>
    public static Source Michigan { get; } = new("michigan-1965",
        "P. K. Trojan, W. N. Bargeron, R. A. Sarin, R. A. Flinn, University of Michigan, ORA Project 07408, Progress Report 1, 1965", Standing.Read);

    /// <summary>Austenite carbon.</summary>
    public static Source Voigt { get; } = new("voigt-loper", "R. C. Voigt, C. R. Loper, carbon of austenite at the austenitising temperature", Standing.Remembered);

    /// <summary>Composition of austempered ductile iron.</summary>
    public static Source DuctileIronData { get; } = new("ductile-iron-data", "Ductile Iron Data for Design Engineers, section IV", Standing.Remembered);

    /// <summary>Tramp elements in ductile iron.</summary>
    public static Source Mullins80 { get; } = new("mullins-80",
        "J. D. Mullins, Sorelmetal Suggestion Sheet 80, Controlling the tramp element content, 2006", Standing.Read);

    /// <summary>Nitrogen in grey iron.</summary>
    public static Source Bcira41 { get; } = new("bcira-41", "BCIRA Broadsheet 41, nitrogen in cast iron", Standing.Read);

    /// <summary>Vapour pressure of magnesium.</summary>
    public static Source MagnesiumVapour { get; } = new("magnesium-vapour", "Handbook constants of the vapour pressure of liquid magnesium", Standing.Remembered);

    /// <summary>Boiling point and a pressure of magnesium.</summary>
    public static Source HotTopics { get; } = new("hot-topics", "Ductile Iron Society, Hot Topics, magnesium, December 2003", Standing.Read);

    /// <summary>Chemistry of Japanese grades at one foundry.</summary>
    public static Source JapaneseGrades { get; } = new("japanese-grades", "A foundry's data page on FCD grades (WSMC)", Standing.Read);

    /// <summary>Grades of nodulariser and inoculant, compositions.</summary>
    public static Source MagnesiumAlloys { get; } = new("magnesium-master-alloy", "Giesserei-Lexikon, entry Magnesium master alloy", Standing.Read);

    /// <summary>Choice of nodulariser.</summary>
    public static Source Elkem20 { get; } = new("elkem-20", "Elkem, Technical Information 20, selection of nodularisers", Standing.Read);

    /// <summary>Residual magnesium in castings.</summary>
    public static Source MagnesiumInCastings { get; } = new("magnesium-residual", "Giesserei-Lexikon, entry Magnesium residual content", Standing.Read);

    /// <summary>Magnesium treatment.</summary>
    public static Source MagnesiumTreatment { get; } = new("magnesiumbehandlung", "Giesserei-Praxis, Giesserei-Lexikon, entry Magnesiumbehandlung", Standing.Read);

    /// <summary>Compositions and uses of inoculants.</summary>
    public static Source Inoculants { get; } = new("inoculants", "Inoculant maker's page on types and uses; Elkem, Technical Information 16", Standing.Read);

    /// <summary>Tramp elements in grey iron.</summary>
    public static Source TraceSheet12 { get; } = new("trace-sheet-12", "Supplier's technical sheet 12, trace elements in cast iron, 2004", Standing.Read);

    /// <summary>Losses of temperature as customary.</summary>
    public static Source LossPractice { get; } = new("loss-practice", "Temperature losses between furnace and mould", Standing.Remembered);

    /// <summary>Grades of grey iron with composition.</summary>
    public static Source AstmA159 { get; } = new("astm-a159", "ASTM A159 / SAE J431, composition table as reproduced on a grade page", Standing.Read);

    /// <summary>Chemistry of one foundry's grades.</summary>
    public static Source FoundryData { get; } = new("foundry-data", "Soliman Group, foundry data page: chemistry by grade", Standing.Read);

    /// <summary>Antimony against rare earths in heavy sections.</summary>
    public static Source Shin2005 { get; } = new("shin-2005",
        "H. Shin, H. Yun, J. Shin, S. Lee, B. Moon, The effect of Sb/RE on heavy section ferritic ductile cast iron, Journal of the Korea Foundry Society 25 (2005) 195-202, abstract", Standing.Read);
}
