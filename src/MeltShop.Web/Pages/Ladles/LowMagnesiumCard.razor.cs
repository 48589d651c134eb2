using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>A sample of the ladle came back under the magnesium floor: what is left, for how long, and what may be done with it.</summary>
public sealed partial class LowMagnesiumCard
{
    [Parameter, EditorRequired]
    public LadleView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public SampleView Sample { get; set; } = null!;

    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }

    private TreatedLadleView Treated => View.Treated!;

    private LadleTimes Times => View.Pouring!.Times;

    private double Floor => Treated.Card!.MgFloorPercent!.Value;

    private double Percent => Sample.Mean(Element.Mg)!.Value;

    private double LeftKg => Treated.Tap!.Kg + View.Pouring!.CameKg - View.Pouring.OutKg;

    /// <summary>The first limit that the magnesium has no part in.</summary>
    private PouringLimit? Other => PouringLimits.Of(Times).FirstOrDefault(limit => limit.Kind != PouringLimitKind.Magnesium);

    private LadleEquipment? Station => WireStation.Of(View);

    private DoseAnswer? Wire => Station is { } station && LeftKg > 0 && Treated.State is (TreatedLadleState.Pouring or TreatedLadleState.Tapped)
        ? DoseQuestion.For(Treated.Card!, Times, LeftKg, station, Now) : null;

    /// <summary>The last sample of a ladle under its floor, unless magnesium was given after it; null where none is.</summary>
    public static SampleView? Low(LadleView view)
    {
        var last = Samples(view).MaxBy(s => (s.Origin.ObservedAt, s.Id));
        return last is not null && IsLow(view, last) && DosedAfter(view, last) is null ? last : null;
    }

    /// <summary>Until when what was poured is held for a low sample; null where none was low.</summary>
    public static DateTimeOffset? HeldUntil(LadleView view) =>
        Samples(view).Where(s => IsLow(view, s)).Select(s => (DateTimeOffset?)(DosedAfter(view, s) ?? DateTimeOffset.MaxValue)).Max();

    private static IEnumerable<SampleView> Samples(LadleView view) => view.Samples
        .Where(s => SampleKinds.Treated.Contains(s.Kind) && !s.Origin.IsCorrected && s.Mean(Element.Mg) is not null); // base iron has none before its treatment

    private static bool IsLow(LadleView view, SampleView sample) => sample.Mean(Element.Mg) < view.Treated?.Card?.MgFloorPercent;

    private static DateTimeOffset? DosedAfter(LadleView view, SampleView sample) => view.Pouring!.Doses
        .Where(d => !d.Origin.IsCorrected && d.Origin.ObservedAt > sample.Origin.ObservedAt).Select(d => (DateTimeOffset?)d.Origin.ObservedAt).Min();
}
