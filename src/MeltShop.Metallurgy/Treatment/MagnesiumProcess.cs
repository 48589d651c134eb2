using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>A way of bringing magnesium into iron, with the ranges printed for it.</summary>
/// <param name="Key">Key of its name.</param>
/// <param name="AgentMgLeast">Least magnesium of its agent, %.</param>
/// <param name="AgentMgMost">Most magnesium of its agent, %.</param>
/// <param name="RecoveryLeast">Least recovery, %.</param>
/// <param name="RecoveryMost">Most recovery, %.</param>
/// <param name="BaseSulphurMost">Most base sulphur, %; null where there is no limit.</param>
/// <param name="IronLeastKg">Least treatment mass, kg; null where there is none.</param>
/// <param name="IronMostKg">Most treatment mass, kg; null where there is none.</param>
/// <param name="DosedOnWeighedMass">True where the magnesium is dosed after the iron was weighed; false where it lies in a pocket before the tap.</param>
public sealed record MagnesiumProcess(
    string Key, double AgentMgLeast, double AgentMgMost, double RecoveryLeast, double RecoveryMost, double? BaseSulphurMost, double? IronLeastKg, double? IronMostKg,
    bool DosedOnWeighedMass)
{
    /// <summary>Where the ranges come from. Others print 60 to 80 % for the tundish, 25 to 60 with a mean of 40 for all processes.</summary>
    public static Source Source => Bibliography.Elkem9;

    /// <summary>The processes.</summary>
    public static IReadOnlyList<MagnesiumProcess> All { get; } =
    [
        new("open-ladle", 4, 15, 45, 90, 0.04, null, null, false),
        new("sandwich", 3, 10, 35, 70, 0.03, null, null, false),
        new("tundish-cover", 3, 10, 50, 80, 0.03, null, null, false),
        new("in-mould", 3, 10, 70, 80, 0.01, null, 500, false),
        new("flow-through", 3, 5, 30, 50, 0.03, null, null, false),
        new("plunging", 10, 45, 30, 60, 0.04, 500, null, true),
        new("plunging-briquette", 15, 100, 30, 50, 0.10, 500, null, true),
        new("converter", 100, 100, 30, 50, null, 500, null, true),
        new("cored-wire", 20, 100, 30, 50, null, 500, null, true),
    ];

    /// <summary>Middle of the printed range: a start, to be replaced by the shop's own recoveries.</summary>
    public double StartingRecoveryPercent => (RecoveryLeast + RecoveryMost) / 2;
}
