using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Pouring;

/// <summary>Treated iron that is poured onto the iron in a pouring furnace or a moving trough.</summary>
/// <param name="Minute">When, min from the start, 0 or more.</param>
/// <param name="Kg">How much, kg, over 0.</param>
/// <param name="MgPercent">Its magnesium then, before it is poured over, %.</param>
public sealed record TopUp(double Minute, double Kg, double MgPercent);

/// <summary>The bath at a moment.</summary>
/// <param name="Minute">Minutes from the start.</param>
/// <param name="KgBefore">Iron just before, kg; 0 where it was poured empty.</param>
/// <param name="MgBefore">Magnesium just before, %; 0 where it was poured empty.</param>
/// <param name="KgAfter">Iron just after, kg.</param>
/// <param name="MgAfter">Magnesium just after, %.</param>
/// <param name="StopAt">Minute at which pouring must stop unless something comes: the floor, or an empty bath.</param>
public sealed record BathMoment(double Minute, double KgBefore, double MgBefore, double KgAfter, double MgAfter, double StopAt);

/// <summary>
/// Iron in a pouring furnace or a moving trough: its magnesium fades all the time, iron is poured off, and what tops it up is mixed in
/// after the loss of being poured over.
/// </summary>
/// <param name="Kg">Iron at the start, kg, over 0.</param>
/// <param name="MgPercent">Its magnesium, %.</param>
/// <param name="Fade">How it falls, of the bath as a whole.</param>
/// <param name="PourKgPerMinute">What is poured off, kg/min, 0 or more.</param>
/// <param name="FloorPercent">Least magnesium that may be poured, %, over 0.</param>
public sealed record PouringBath(double Kg, double MgPercent, Fade Fade, double PourKgPerMinute, double FloorPercent)
{
    /// <summary>The start and each topping up, in the order of time; pouring over loses the most that is printed.</summary>
    /// <param name="topUps">In any order.</param>
    public IReadOnlyList<BathMoment> Follow(IEnumerable<TopUp> topUps) => Follow(topUps, ReLadling.LossPercent.Most);

    /// <summary>The start and each topping up, in the order of time.</summary>
    /// <param name="topUps">In any order.</param>
    /// <param name="lossPercent">What pouring over loses of what comes, % Mg, 0 or more.</param>
    public IReadOnlyList<BathMoment> Follow(IEnumerable<TopUp> topUps, double lossPercent)
    {
        ArgumentNullException.ThrowIfNull(topUps);
        var moments = new List<BathMoment> { Moment(0, Kg, MgPercent, Iron(Kg, MgPercent)) };
        foreach (var topUp in topUps.OrderBy(t => t.Minute))
        {
            var last = moments[^1];
            var minutes = topUp.Minute - last.Minute;
            var kg = Math.Max(0, last.KgAfter - PourKgPerMinute * minutes);
            var mg = kg > 0 ? Fade.After(last.MgAfter, minutes) : 0;
            var comes = Iron(topUp.Kg, ReLadling.After(topUp.MgPercent, 1, lossPercent));
            moments.Add(Moment(topUp.Minute, kg, mg, kg > 0 ? Iron(kg, mg).Plus(comes) : comes));
        }

        return moments;
    }

    private BathMoment Moment(double minute, double kgBefore, double mgBefore, Metal after)
    {
        var mg = after.Percent(Element.Mg);
        var empty = PourKgPerMinute > 0 ? after.Kg / PourKgPerMinute : double.PositiveInfinity;
        return new(minute, kgBefore, mgBefore, after.Kg, mg, minute + Math.Min(empty, Fade.MinutesTo(mg, FloorPercent)));
    }

    private static Metal Iron(double kg, double mgPercent) => Metal.Of(kg, Analysis.Of((Element.Mg, mgPercent)));
}
