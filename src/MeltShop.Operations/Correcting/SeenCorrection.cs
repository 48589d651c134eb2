namespace MeltShop.Operations.Correcting;

/// <summary>The masses that stood on the screen when a person accepted a correction: what they said yes to.</summary>
/// <param name="TapOffKg">To be tapped off first, kg.</param>
/// <param name="Kg">Additions, kg, by the code of their material.</param>
public sealed record SeenCorrection(double TapOffKg, IReadOnlyDictionary<string, double> Kg)
{
    /// <summary>A gram: more than the last digits of a solver, less than any scale at a furnace shows.</summary>
    private const double SameKg = 0.001;

    public static SeenCorrection Of(CorrectionProposal proposal)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        return new(proposal.Plan.TapOffKg, proposal.Plan.Plan.Lines.ToDictionary(line => line.Code, line => line.Kg));
    }

    /// <summary>Whether the other asks for the same masses.</summary>
    public bool IsAs(SeenCorrection other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Math.Abs(TapOffKg - other.TapOffKg) <= SameKg
            && Kg.Keys.Union(other.Kg.Keys).All(code => Math.Abs(Kg.GetValueOrDefault(code) - other.Kg.GetValueOrDefault(code)) <= SameKg);
    }
}
