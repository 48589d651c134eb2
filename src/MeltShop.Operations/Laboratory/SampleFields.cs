using MeltShop.Operations.Checking;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;

namespace MeltShop.Operations.Laboratory;

/// <summary>What is asked of a sample beside its burns, when it is recorded and when it is corrected.</summary>
internal static class SampleFields
{
    /// <summary>
    /// Whether a ladle in that state has iron for such a sample. The base iron is sampled at the spout, when the pocket is laid and
    /// before the tap is weighed; every other sample of a ladle needs iron in it.
    /// </summary>
    public static bool IsReady(TreatedLadleState state, SampleKind kind) =>
        state != TreatedLadleState.Abandoned && (state != TreatedLadleState.Prepared || kind == SampleKind.LadleBase);

    public static void Check(SampleKind kind, long? treatedLadleId, string? coinNumber, string? remarks, FieldCheck fields)
    {
        fields.Choice("kind", kind);
        fields.OptionalText("coinNumber", coinNumber, 60);
        fields.OptionalText("remarks", remarks);
        if (kind is SampleKind.AfterTreatment or SampleKind.LastMetal && treatedLadleId is null) fields.Add("treatedLadleId", "sample.ladleMissing");
        if (SampleKinds.OfTheBath.Contains(kind) && treatedLadleId is not null) fields.Add("treatedLadleId", "sample.notOfLadle");
    }
}
