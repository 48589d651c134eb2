using System.Text.Json;

namespace MeltShop.Records.Reading;

/// <summary>What a stored plan or card says that it used.</summary>
internal sealed record UsedIds(long? BathSample = null, long? AlloyAnalysis = null, IReadOnlyList<long>? Analyses = null)
{
    public static UsedIds Of(string versions) => JsonSerializer.Deserialize<UsedIds>(versions, JsonSerializerOptions.Web) ?? new();

    public IEnumerable<long> AllAnalyses => (Analyses ?? []).Concat(AlloyAnalysis is { } id ? [id] : []);
}
