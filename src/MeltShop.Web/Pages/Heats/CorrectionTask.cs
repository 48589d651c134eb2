using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Storing;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Pages.Correction;

namespace MeltShop.Web.Pages.Heats;

/// <summary>An accepted correction beside what has been weighed into the bath since, and what the next sample showed.</summary>
/// <param name="Lines">In the order in which they go in.</param>
/// <param name="TapOffKg">To be tapped off first, kg.</param>
/// <param name="Predicted">The bath that the correction promised.</param>
/// <param name="Sample">The first bath sample in force since; null where none was taken.</param>
public sealed record CorrectionTask(
    BathCorrectionView Correction, IReadOnlyList<WeighingRow> Lines, double TapOffKg, IReadOnlyList<PredictedValue> Predicted, SampleView? Sample)
{
    public bool IsDone => Lines.All(line => line.IsDone || line.IsOver);

    public static CorrectionTask Of(BathCorrectionView correction, HeatView heat, IReadOnlyList<MaterialView> yard)
    {
        ArgumentNullException.ThrowIfNull(correction);
        ArgumentNullException.ThrowIfNull(heat);
        var proposal = StoredJson.Value<CorrectionProposal>(correction.Answer);
        var since = heat.Weighings.Where(w => w.IntoBath && !w.Origin.IsCorrected && w.Origin.ObservedAt >= correction.Origin.ObservedAt).ToLookup(w => w.MaterialCode);
        var sample = heat.Samples.Where(s => SampleKinds.OfTheBath.Contains(s.Kind) && !s.Origin.IsCorrected && s.Origin.ObservedAt > correction.Origin.ObservedAt)
            .MinBy(s => s.Origin.ObservedAt);
        return new(
            correction,
            [
                .. AdditionOrder.Of(proposal.Plan.Plan.Lines, yard).Select(line => WeighingRow.For(
                    line.Code, yard.FirstOrDefault(m => m.Code == line.Code), line.Kg, [.. since[line.Code]])),
            ],
            proposal.Plan.TapOffKg,
            [.. proposal.Plan.Plan.Limits.Where(limit => Element.TryParse(limit.Quantity, out _)).Select(limit => PredictedValue.Of(limit.Quantity, limit.Value, sample))],
            sample);
    }
}

/// <param name="Measured">By the sample since; null where there is none, or where it did not measure the element.</param>
public sealed record PredictedValue(Element Element, double Predicted, double? Measured)
{
    internal static PredictedValue Of(string symbol, double predicted, SampleView? sample)
    {
        var element = Element.Parse(symbol);
        return new(element, predicted, sample?.Mean(element));
    }
}
