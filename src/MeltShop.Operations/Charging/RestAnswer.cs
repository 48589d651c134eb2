using MeltShop.Charging.Plans;
using MeltShop.Charging.WeighingIn;

namespace MeltShop.Operations.Charging;

/// <summary>How much of what was asked can still be had once some of the charge is in the furnace.</summary>
public enum RestStanding
{
    /// <summary>All of it.</summary>
    Kept,

    /// <summary>The limits, but not their margins or the confidence that was asked for, or nothing was found that keeps those: see <see cref="RestAnswer.End"/>.</summary>
    WithoutMargin,

    /// <summary>Not the limits, or not the mass: the rest is what does the least harm.</summary>
    Missed,

    /// <summary>The charge was made by hand and stands as it was made; it misses what it was made to miss.</summary>
    AsMade,

    /// <summary>No charge was found; why is said by <see cref="RestAnswer.End"/>.</summary>
    None,

    /// <summary>Something is in of which something is not known, so that nobody can say what the furnace holds.</summary>
    Unknown,
}

/// <summary>The rest of a charge as it was planned anew.</summary>
/// <param name="Charge">The whole charge as it should become, what is in already included; null where nobody can say.</param>
public sealed record RestAnswer(RestStanding Standing, ChargeEvaluation? Charge)
{
    /// <summary>What is in the furnace and cannot be reckoned with.</summary>
    public IReadOnlyList<UnknownMaterial> Unknown { get; init; } = [];

    /// <summary>
    /// How the search ended; where there is no charge, why. For <see cref="RestStanding.WithoutMargin"/> that of the search for a rest with the margin: there is none
    /// only where it is <see cref="SearchEnd.Proven"/>, otherwise nobody knows.
    /// </summary>
    public SearchEnd End { get; init; }

    /// <summary>What the charge stands on; null where only masses were asked about.</summary>
    public RestHeel? Heel { get; init; }

    /// <summary>The most liquid that it may make if the heel is the larger of those that are told, kg; null where nobody can say.</summary>
    public double? MostLiquidKg => LiquidKg + (Heel is { } heel ? heel.MostKg - heel.Metal.Kg : 0);

    /// <summary>How far what is still to come can move each limited quantity.</summary>
    public IReadOnlyList<ReachableRange> StillPossible { get; init; } = [];

    /// <summary>
    /// What is in, should nothing more be added; null where nobody can say. Once nothing is asked for any more this is how it stands, whatever the rest was
    /// planned to bring.
    /// </summary>
    public RestAnswer? AsItIs { get; init; }

    /// <summary>Masses by code; null where nobody can say.</summary>
    public IReadOnlyList<PlanLine>? Lines => Charge?.Lines;

    /// <summary>Liquid that it makes, kg; null where nobody can say.</summary>
    public double? LiquidKg => Charge?.LiquidKg;

    /// <summary>Liquid that is missing of what was wanted, kg; 0 where none is, and where more is still to come.</summary>
    public double ShortKg { get; init; }

    /// <summary>What the melt will miss.</summary>
    public IReadOnlyList<Miss> Misses => Charge?.Misses ?? [];
}

/// <summary>A material that is in and was not planned.</summary>
/// <param name="Why">Code of what is missing, as <see cref="ChargeMaterials.Gap"/> has it; <see cref="Gone"/> where the yard has it no more.</param>
public sealed record UnknownMaterial(string Code, string Name, string Why)
{
    public const string Gone = "material.gone";
}
