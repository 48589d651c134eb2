using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>A treatment alloy as printed: ranges to recognise a kind by. A lot's certificate goes before it.</summary>
/// <param name="Name">Usual name or use.</param>
/// <param name="MgLeast">Least magnesium, %.</param>
/// <param name="MgMost">Most magnesium, %.</param>
/// <param name="SiLeast">Least silicon, %; null where the alloy is none of silicon.</param>
/// <param name="SiMost">Most silicon, %.</param>
/// <param name="CaMost">Most calcium, %; null where not printed.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record AlloyGuide(string Name, double MgLeast, double MgMost, double? SiLeast, double? SiMost, double? CaMost, Source Source)
{
    /// <summary>The alloys. Nickel alloys hold 60 % Ni (FeNiMg4) or 80 to 85 % (NiMg15).</summary>
    public static IReadOnlyList<AlloyGuide> All { get; } =
    [
        new("FeSiMg10", 8, 11, 45, 50, 3, Bibliography.MagnesiumAlloys),
        new("FeSiMg30", 30, 32, 55, 60, 5, Bibliography.MagnesiumAlloys),
        new("FeNiMg4", 4, 5, null, null, null, Bibliography.MagnesiumAlloys),
        new("NiMg4", 4, 5, null, null, null, Bibliography.MagnesiumAlloys),
        new("NiMg15", 14, 17, null, 3, 1, Bibliography.MagnesiumAlloys),
        new("in-mould", 5.0, 6.0, 44, 48, 0.6, Bibliography.Elkem20),
        new("flow-through", 2.8, 3.5, 44, 48, 1.6, Bibliography.Elkem20),
        new("sandwich", 3.5, 4.0, 44, 48, 1.8, Bibliography.Elkem20),
    ];

    /// <summary>Magnesium of the alloy that fits the silicon of the base iron (Elkem, Technical Information 20).</summary>
    /// <param name="baseSiliconPercent">Silicon of the base iron, %.</param>
    /// <returns><c>5</c>, <c>10-or-low-silicon</c> or <c>low-silicon</c>; null under 0.5 %, for which nothing is printed.</returns>
    public static string? ForBaseSilicon(double baseSiliconPercent) => baseSiliconPercent switch
    {
        >= 0.5 and <= 1.5 => "5",
        > 1.5 and <= 1.8 => "10-or-low-silicon",
        > 1.8 => "low-silicon",
        _ => null,
    };
}
