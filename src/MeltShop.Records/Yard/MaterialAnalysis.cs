using MeltShop.Records.Keeping;

namespace MeltShop.Records.Yard;

/// <summary>An analysis of a material as it was known from some day on; a better one supersedes it.</summary>
public sealed class MaterialAnalysis : Fact
{
    public required long MaterialId { get; init; }

    /// <summary>Author, title, edition and year, a certificate, or "from memory".</summary>
    public required string Source { get; init; }

    /// <summary><c>standard</c>, <c>certificate</c>, <c>supplierTypical</c>, <c>learnt</c> or <c>memory</c>.</summary>
    public required string SourceKind { get; init; }

    public List<MaterialPercent> Percents { get; init; } = [];
}
