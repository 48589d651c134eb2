using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Pouring;

/// <summary>The same as <see cref="TopUp"/>, its magnesium as a band.</summary>
/// <param name="Minute">When, min from the start, 0 or more.</param>
/// <param name="Kg">How much, kg, over 0.</param>
/// <param name="Mg">Its magnesium then, before it is poured over.</param>
public sealed record TopUpBand(double Minute, double Kg, MagnesiumRange Mg);

/// <summary>The bath at a moment, as a band.</summary>
/// <param name="Before">Magnesium just before; 0 to 0 where it was poured empty.</param>
/// <param name="After">Magnesium just after.</param>
/// <param name="LeastStopAt">The earliest minute at which pouring may have to stop.</param>
/// <param name="MostStopAt">The latest.</param>
public sealed record BathBand(MagnesiumRange Before, MagnesiumRange After, double LeastStopAt, double MostStopAt);

/// <summary>
/// A pouring bath of which magnesium and fade are known as bands; pouring over loses the least to the most that is printed. All that comes
/// of it rises with the magnesium of either part and falls with fade and loss, so its ends are at ends of the bands.
/// </summary>
/// <param name="Kg">Iron at the start, kg, over 0.</param>
/// <param name="Mg">Its magnesium.</param>
/// <param name="Fastest">How it falls at the worst.</param>
/// <param name="Slowest">How it falls at the best.</param>
/// <param name="PourKgPerMinute">What is poured off, kg/min, 0 or more.</param>
/// <param name="FloorPercent">Least magnesium that may be poured, %, over 0.</param>
public sealed record PouringBathBand(double Kg, MagnesiumRange Mg, Fade Fastest, Fade Slowest, double PourKgPerMinute, double FloorPercent)
{
    /// <summary>The start and each topping up, in the order of time.</summary>
    public IReadOnlyList<BathBand> Follow(IEnumerable<TopUpBand> topUps)
    {
        ArgumentNullException.ThrowIfNull(topUps);
        var all = topUps.ToList();
        var worst = new PouringBath(Kg, Mg.LeastPercent, Fastest, PourKgPerMinute, FloorPercent)
            .Follow(all.Select(t => new TopUp(t.Minute, t.Kg, t.Mg.LeastPercent)), ReLadling.LossPercent.Most);
        var best = new PouringBath(Kg, Mg.MostPercent, Slowest, PourKgPerMinute, FloorPercent)
            .Follow(all.Select(t => new TopUp(t.Minute, t.Kg, t.Mg.MostPercent)), ReLadling.LossPercent.Least);
        return [.. worst.Zip(best, (w, b) => new BathBand(new(w.MgBefore, b.MgBefore), new(w.MgAfter, b.MgAfter), w.StopAt, b.StopAt))];
    }
}
