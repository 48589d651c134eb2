using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;

namespace MeltShop.Charging.Formulation;

/// <summary>What a charge and a correction have in common: metal that is there, what may change it, and what it has to meet.</summary>
internal sealed record Melt
{
    /// <summary>
    /// A column without a bound of its own goes no farther than this many times the melt. A material that brings no liquid, or a bath without a capacity, would leave
    /// a price below zero without end: what comes to stand here is <see cref="Endless"/>. Nothing that a furnace can take is cut off.
    /// </summary>
    private const double MostOfMelt = 1000;

    public required Metal Start { get; init; }

    public required IReadOnlyList<MeltColumn> Columns { get; init; }

    public required IReadOnlyList<QuantityLimit> Limits { get; init; }

    public IReadOnlyList<GroupLimit> Groups { get; init; } = [];

    public IReadOnlyList<VolumeLimit> Volumes { get; init; } = [];

    public double LeastLiquidKg { get; init; }

    public double MostLiquidKg { get; init; } = double.PositiveInfinity;

    /// <summary>The liquid mass that the caller named; null where he named none.</summary>
    public double? WantedKg { get; init; }

    /// <summary>What the furnace holds, kg.</summary>
    public double CapacityKg { get; init; } = double.PositiveInfinity;

    public double MostWeighedKg { get; init; } = double.PositiveInfinity;

    /// <summary>Number of standard deviations that each bound keeps away.</summary>
    public double Deviations { get; init; }

    /// <summary>Mass that the program is scaled by, so that its unknowns are about 1 at any size of furnace.</summary>
    public required double ScaleKg { get; init; }

    public bool HasPieces => Columns.Any(c => c.Material?.PieceKg is not null);

    /// <summary>Whether a material is to be left out or to come with a mass that is worth weighing.</summary>
    public bool HasLeastIfUsed => Columns.Any(c => c.LeastIfUsedKg > 0);

    public bool LiquidIsFixed => LeastLiquidKg == MostLiquidKg;

    public static double Scale(double kg) => kg > 0 ? kg : 1;

    /// <summary>Kilograms of one unit of a column: a piece, or the scale of the melt.</summary>
    public double UnitKg(MeltColumn column) => column.IsInPieces ? column.Material!.PieceKg!.Value : ScaleKg;

    public double MostKg(MeltColumn column) =>
        column.Material?.MaxPercent == 0 ? column.WeighedKg
        : double.IsFinite(column.MostKg) && !(column.LiquidKg > 0 && double.IsFinite(MostLiquidKg)) ? column.MostKg
        : Math.Min(column.MostKg, MostOfMelt * (double.IsFinite(MostLiquidKg) ? Math.Max(ScaleKg, MostLiquidKg) : ScaleKg));

    /// <summary>Names of the columns that only the program's own bound holds: there is no cheapest charge then.</summary>
    public IReadOnlyList<string> Endless(double[] kg) =>
        [.. Columns.Where((c, j) => kg[j] >= MostKg(c) * (1 - 1e-6) && MostKg(c) < c.MostKg && c.Material?.MaxPercent != 0).Select(c => c.Name)];

    public double LiquidKg(double[] kg)
    {
        var sum = Start.Kg;
        for (var j = 0; j < kg.Length; j++) sum += Columns[j].LiquidKg * kg[j];
        return sum;
    }
}
