using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Operations.Storing;

/// <summary>Which versions of program and formulas made a stored result, as text beside it.</summary>
public static class FormulaVersions
{
    /// <summary>Version of this program; it pins the solver and all formulas.</summary>
    public static string Program { get; } = typeof(FormulaVersions).Assembly.GetName().Version?.ToString(3) ?? "unknown";

    /// <summary>For a charge plan: the carbon equivalent is the one form that a shop may choose.</summary>
    public static string ForCharge(IEnumerable<long> analysisIds) =>
        StoredJson.Text(new { Program, CarbonEquivalent = CarbonEquivalent.Default.Id, Analyses = analysisIds });

    /// <summary>What a stored plan says that it was made with.</summary>
    public static ChargeVersions OfCharge(string versions) => StoredJson.Value<ChargeVersions>(versions);

    /// <summary>The bath sample that a pocket card started from; null where its versions name none.</summary>
    public static long? BathSample(string versions) => StoredJson.Value<ForReading>(versions).BathSample;

    /// <summary>For a pocket card.</summary>
    public static string ForPocket(long? alloyAnalysisId, long? bathSampleId) =>
        StoredJson.Text(new { Program, Treatment = "massBalance-1", AlloyAnalysis = alloyAnalysisId, BathSample = bathSampleId });

    private sealed record ForReading(long? BathSample);
}
