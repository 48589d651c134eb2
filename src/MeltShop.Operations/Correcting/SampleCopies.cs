using MeltShop.Operations.Heats;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>How the sample that stands compares with the one that it corrects.</summary>
internal static class SampleCopies
{
    /// <summary>The burns once more, value by value.</summary>
    public static List<Burn> Of(IEnumerable<Burn> burns) =>
    [
        .. burns.OrderBy(b => b.Ordinal).Select(b => new Burn
        {
            Ordinal = b.Ordinal,
            Readings =
            [
                .. b.Readings.Select(r => new Reading { Element = r.Element, Percent = r.Percent, BelowDetection = r.BelowDetection, InstrumentText = r.InstrumentText }),
            ],
        }),
    ];

    /// <summary>The figures once more.</summary>
    public static List<SampleFigure> Of(IEnumerable<SampleFigure> figures) =>
        [.. figures.Select(f => new SampleFigure { Quantity = f.Quantity, Value = f.Value, InstrumentText = f.InstrumentText })];

    /// <summary>Nothing at all was changed.</summary>
    public static bool IsSameAs(this Sample right, Sample wrong) =>
        (right.HeatId, right.TreatedLadleId, right.Kind, right.CoinNumber, right.Remarks, right.ObservedAt, right.GreyFracture, right.InstrumentId)
        == (wrong.HeatId, wrong.TreatedLadleId, wrong.Kind, wrong.CoinNumber, wrong.Remarks, wrong.ObservedAt, wrong.GreyFracture, wrong.InstrumentId)
        && Texts(right).SequenceEqual(Texts(wrong))
        && right.Figures.Select(f => (f.Quantity, f.Value, f.InstrumentText)).Order().SequenceEqual(wrong.Figures.Select(f => (f.Quantity, f.Value, f.InstrumentText)).Order());

    /// <summary>
    /// It says the same of the same iron: another coin number or remark changes no judgement. Another instrument does: its guard band is
    /// another, and what it says of carbon.
    /// </summary>
    public static bool SpeaksAs(this Sample right, Sample wrong) =>
        (right.HeatId, right.TreatedLadleId, right.Kind, right.ObservedAt, right.GreyFracture, right.InstrumentId)
        == (wrong.HeatId, wrong.TreatedLadleId, wrong.Kind, wrong.ObservedAt, wrong.GreyFracture, wrong.InstrumentId)
        && right.Means.OrderBy(m => m.Element).Select(m => (m.Element, m.Percent)).SequenceEqual(wrong.Means.OrderBy(m => m.Element).Select(m => (m.Element, m.Percent)))
        && right.Figures.Select(f => (f.Quantity, f.Value)).Order().SequenceEqual(wrong.Figures.Select(f => (f.Quantity, f.Value)).Order());

    /// <summary>Brings a heat that is charging or sampled to the state that its samples in force say.</summary>
    public static async Task Follow(this Writing writing, long heatId, CancellationToken cancellation)
    {
        var heat = (await writing.Db.Heats.FindAsync([heatId], cancellation))!;
        if (heat.State is not (HeatState.Charging or HeatState.Bath)) return;
        var sampled = await writing.Db.InForce<Sample>().AnyAsync(s => s.HeatId == heatId && s.Kind == SampleKind.Bath, cancellation);
        writing.Step(heat, sampled ? HeatState.Bath : HeatState.Charging);
    }

    private static IEnumerable<(int, Metallurgy.Elements.Element, double, bool, string)> Texts(Sample sample) =>
        from burn in sample.Burns
        from reading in burn.Readings
        orderby burn.Ordinal, reading.Element
        select (burn.Ordinal, reading.Element, reading.Percent, reading.BelowDetection, reading.InstrumentText);
}
