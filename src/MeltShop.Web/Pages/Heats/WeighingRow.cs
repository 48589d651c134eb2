using MeltShop.Charging.Plans;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Storing;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Units;
using MeltShop.Web.Components.Weighing;

namespace MeltShop.Web.Pages.Heats;

/// <summary>A material on the weighing card. Masses in kg weighed.</summary>
/// <param name="MaterialId">Null where the yard no longer has the material: then it cannot be weighed in.</param>
/// <param name="TargetKg">What it should become by the newest plan of the rest; 0 where it is not wanted.</param>
/// <param name="Entries">How many times it was weighed.</param>
public sealed record WeighingRow(long? MaterialId, string Code, string Name, MaterialKind? Kind, double TargetKg, double ActualKg, int Entries)
{
    /// <summary>Nearer to the target than this is as good as on it, %: a magnet does not weigh scrap closer.</summary>
    internal const double NearPercent = 1;

    /// <summary>
    /// Less than this share of the melt nobody weighs, %: even pure carbon would move the bath by 0.005 %, a quarter of what two spectrometer readings of it
    /// differ by (common practice, no source).
    /// </summary>
    private const double WorthWeighingPercent = 0.005;

    /// <summary>The least mass of a material that is worth weighing for a melt of so much, kg.</summary>
    public static double LeastKg(double meltKg) => meltKg * WorthWeighingPercent / 100;

    /// <summary>It has to lie low in the cold charge: the plan reckons with a recovery that it does not have on liquid iron.</summary>
    public bool IsLostLate { get; init; }

    /// <summary>The rest wants of it what is not worth weighing, and the first plan wanted none.</summary>
    public bool IsTooLittle { get; init; }

    /// <summary>What the plan that the heat was started from wanted; 0 where it did not.</summary>
    public double PlannedKg { get; init; } = TargetKg;

    /// <summary>The bath was sampled: nothing of the charge is still to come.</summary>
    public bool IsPast { get; init; }

    /// <summary>Nobody can say what it should become: nothing of it is asked for before a metallurgist has looked.</summary>
    public bool IsStopped { get; init; }

    /// <summary>From which lots what is left is taken, the oldest first; empty where the yard has none.</summary>
    public IReadOnlyList<LotShare> Lots { get; init; } = [];

    /// <summary>What is still to be weighed in; negative where there is too much.</summary>
    public double LeftKg => TargetKg - ActualKg;

    public bool IsDone => TargetKg > 0 && IsNear && !IsOver;

    /// <summary>More is in than the first plan wanted, and no more is needed.</summary>
    public bool IsOver => ActualKg > PlannedKg * (1 + (NearPercent / 100)) && (IsNear || LeftKg <= 0);

    /// <summary>The rest of the charge was planned anew, and this is another target than the first.</summary>
    public bool IsMoved => Math.Abs(TargetKg - PlannedKg) > PlannedKg * NearPercent / 100;

    /// <summary>Can be weighed, and is still wanted.</summary>
    public bool IsOpen => this is { IsPast: false, IsDone: false, IsOver: false, IsTooLittle: false, LeftKg: > 0, MaterialId: not null };

    /// <summary>The row on the card.</summary>
    /// <param name="isNext">Whether it is the next one to weigh.</param>
    public WeighingStep Step(bool isNext) => new(
        Code, Name, TargetKg, Entries == 0 ? null : ActualKg,
        IsDone ? WeighingStanding.Done : IsOver ? WeighingStanding.Over : IsPast && TargetKg > 0 ? WeighingStanding.Short : isNext ? WeighingStanding.Next : WeighingStanding.Later) { Lots = IsOpen ? Lots : [], PlannedKg = PlannedKg };

    /// <summary>So is a mass that reads like the target: of a few hundred grams a scale shows no more.</summary>
    private bool IsNear => Math.Abs(LeftKg) <= TargetKg * NearPercent / 100 || MassText.Show(ActualKg) == MassText.Show(TargetKg);

    /// <summary>
    /// The card of a heat in the order of loading: carburiser low in the cold furnace with light steel, and with it silicon carbide, of which
    /// little arrives on a bath; heavy pieces on them, returns, and ferro-alloys last, silicon after the carbon (common practice, no source). What goes into the
    /// bath is no part of it, but where the heat is charged again, its coin having been another's: there it is in as all else is.
    /// </summary>
    /// <param name="rest">The rest as it was planned anew; null where the plan stands as it is.</param>
    /// <param name="isStopped">There are no targets: see <see cref="FirstPlan.IsStopped"/>.</param>
    public static IReadOnlyList<WeighingRow> Of(HeatView heat, IReadOnlyList<MaterialView> yard, IReadOnlyList<PlanLine>? rest = null, bool isStopped = false)
    {
        ArgumentNullException.ThrowIfNull(heat);
        yard = StoredChoice.Reached(heat.Plan, yard);
        var planned = StoredJson.Value<ChargePlan>(heat.Plan.Answer).Lines.ToDictionary(line => line.Code, line => line.Kg);
        var targets = (isStopped ? [] : rest)?.ToDictionary(line => line.Code, line => line.Kg) ?? planned;
        var isPast = heat.Heat.State is not HeatState.Charging;
        var weighed = heat.Weighings.Where(weighing => !weighing.Origin.IsCorrected && !(isPast && weighing.IntoBath)).ToLookup(weighing => weighing.MaterialCode);
        return
        [
            .. targets.Keys.Union(planned.Keys).Union(weighed.Select(group => group.Key))
                .Select(code => For(code, yard.FirstOrDefault(material => material.Code == code), targets.GetValueOrDefault(code), [.. weighed[code]]) with
                {
                    PlannedKg = planned.GetValueOrDefault(code), IsPast = isPast, IsStopped = isStopped,
                    IsTooLittle = !planned.ContainsKey(code) && !weighed.Contains(code) && targets[code] < LeastKg(heat.Plan.MeltKg),
                })
                .OrderBy(Place).ThenByDescending(row => row.PlannedKg).ThenByDescending(row => row.TargetKg),
        ];
    }

    /// <summary>One row: what was planned of a material, and what of it was weighed.</summary>
    internal static WeighingRow For(string code, MaterialView? material, double targetKg, IReadOnlyList<WeighingView> weighings) => new(
        material?.Id, code, material?.Name ?? (weighings.Count > 0 ? weighings[0].MaterialName : code), material?.Kind, targetKg,
        weighings.Sum(weighing => weighing.Kg), weighings.Count)
    {
        IsLostLate = material is { IsLostLate: true },
        Lots = material is null ? [] : LotShare.Of(material, targetKg - weighings.Sum(weighing => weighing.Kg)),
    };

    private static int Place(WeighingRow row) => row switch
    {
        { Kind: MaterialKind.Carburiser } => 0,
        { Kind: MaterialKind.FerroAlloy, IsLostLate: true } => 1,
        { Kind: MaterialKind.SteelScrap } => 2,
        { Kind: MaterialKind.CastScrap } => 3,
        { Kind: MaterialKind.PigIron } => 4,
        { Kind: MaterialKind.Returns } => 5,
        _ => 6,
    };
}
