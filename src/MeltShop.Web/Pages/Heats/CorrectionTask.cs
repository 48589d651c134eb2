using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Route;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Storing;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Pages.Correction;

namespace MeltShop.Web.Pages.Heats;

/// <summary>An accepted correction beside what has been weighed into the bath since, and what the next sample showed.</summary>
/// <param name="Lines">In the order in which they go in.</param>
/// <param name="TapOffKg">To be tapped off first, kg.</param>
/// <param name="TappedOffKg">What has left the furnace since, pigged or tapped, kg.</param>
/// <param name="Predicted">The bath that the correction promised; nothing of what nobody had measured in it.</param>
/// <param name="Sample">The first bath sample in force since and before the next correction; null where none was taken.</param>
public sealed record CorrectionTask(
    BathCorrectionView Correction, IReadOnlyList<WeighingRow> Lines, double TapOffKg, double TappedOffKg, IReadOnlyList<PredictedValue> Predicted,
    SampleView? Sample)
{
    /// <summary>As near as an addition has to be.</summary>
    public bool IsTappedOff => TappedOffKg >= TapOffKg * (1 - (WeighingRow.NearPercent / 100));

    public bool IsDone => IsTappedOff && Lines.All(line => line.IsDone || line.IsOver);

    public static CorrectionTask Of(BathCorrectionView correction, HeatView heat, IReadOnlyList<MaterialView> yard)
    {
        ArgumentNullException.ThrowIfNull(correction);
        ArgumentNullException.ThrowIfNull(heat);
        var proposal = StoredJson.Value<CorrectionProposal>(correction.Answer);
        var from = correction.Origin.ObservedAt;
        var until = heat.Corrections.SkipWhile(c => c.Id != correction.Id).Skip(1).FirstOrDefault(c => !c.Origin.IsCorrected)?.Origin.ObservedAt;
        var since = heat.Weighings.Where(w => w.IntoBath && !w.Origin.IsCorrected && IsOfIt(w.Origin)).ToLookup(w => w.MaterialCode);
        var sample = heat.Samples.Where(s => SampleKinds.OfTheBath.Contains(s.Kind) && !s.Origin.IsCorrected && s.Origin.ObservedAt > from && !(s.Origin.ObservedAt > until))
            .MinBy(s => s.Origin.ObservedAt);
        return new(
            correction,
            [
                .. AdditionOrder.Of(proposal.Plan.Plan.Lines, yard).Select(line => WeighingRow.For(
                    line.Code, yard.FirstOrDefault(m => m.Code == line.Code), line.Kg, [.. since[line.Code]])),
            ],
            proposal.Plan.TapOffKg,
            -heat.Metal.Where(m => m.Kind is FurnaceMetalKind.Pigged or FurnaceMetalKind.Tapped && !m.Origin.IsCorrected && IsOfIt(m.Origin)).Sum(m => m.Kg),
            [.. proposal.Plan.Plan.Told().Where(limit => !proposal.Plan.Plan.IsFromZero(limit.Quantity)).Select(limit => PredictedValue.Of(limit.Quantity, limit.Value, sample))],
            sample);

        bool IsOfIt(Origin origin) => origin.ObservedAt >= from && !(origin.ObservedAt >= until);
    }
}

/// <param name="Measured">By the sample since; null where there is none, where it did not measure what it takes, or cannot tell the carbon.</param>
/// <param name="IsJudged">False where it rests on a carbon that the spark of a grey coin does not tell.</param>
public sealed record PredictedValue(string Quantity, double Predicted, double? Measured, bool IsJudged)
{
    internal static PredictedValue Of(string name, double predicted, SampleView? sample)
    {
        var quantity = WindowQuantity.Find(name);
        var isJudged = sample?.CarbonIsJudged != false || quantity?.Elements.Contains(Element.C) != true;
        return new(
            name, predicted, isJudged && sample?.Analysis() is { } found && quantity?.Missing(found).Count == 0 && quantity.IsMeantFor(found) ? quantity.Value(found) : null, isJudged);
    }
}
