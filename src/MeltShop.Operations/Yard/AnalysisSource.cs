using MeltShop.Operations.Checking;

namespace MeltShop.Operations.Yard;

/// <summary>Where an analysis may come from: no analysis stands in the yard without saying so.</summary>
public static class AnalysisSource
{
    public static IReadOnlyList<string> Kinds { get; } =
    [
        "standard", "certificate", "supplierTypical", "publishedRange", "learnt", "memory", "demo",
    ];

    internal static void Check(string source, string kind, FieldCheck fields)
    {
        fields.Text("source", source, 2000);
        if (!Kinds.Contains(kind)) fields.Add("sourceKind", "choice.unknown", kind);
    }
}
