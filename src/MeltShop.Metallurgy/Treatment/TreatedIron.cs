using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Iron at the end of the reaction, and what time does to its magnesium.</summary>
/// <param name="AtStart">The metal at minute 0.</param>
/// <param name="Before">The iron before treatment.</param>
/// <param name="Fade">How magnesium falls.</param>
public sealed record TreatedIron(Metal AtStart, Metal Before, Fade Fade)
{
    /// <summary>Magnesium at minute 0, %.</summary>
    public double MgPercent => AtStart.Percent(Element.Mg);

    /// <summary>Silicon after less silicon before, percentage points; the dilution by the alloy's mass is in it.</summary>
    public double SiliconPickupPercent => AtStart.Percent(Element.Si) - Before.Percent(Element.Si);

    /// <summary>Magnesium after some minutes, %.</summary>
    public double MgPercentAt(double minutes) => Fade.After(MgPercent, minutes);

    /// <summary>Magnesium after some minutes and re-ladlings, %: the fade of all the minutes, then the loss of each re-ladling.</summary>
    /// <param name="minutes">Minutes from the end of the reaction, 0 or more.</param>
    /// <param name="reLadlings">How often it was poured over, 0 or more.</param>
    /// <param name="lossPercent">Loss at each, %: 0.007 to 0.010 as printed.</param>
    public double MgPercentAt(double minutes, int reLadlings, double lossPercent) => ReLadling.After(MgPercentAt(minutes), reLadlings, lossPercent);

    /// <summary>Minutes from the end of the reaction until magnesium has fallen to a floor: pouring must stop then.</summary>
    public double MinutesTo(double floorPercent) => Fade.MinutesTo(MgPercent, floorPercent);

    /// <summary>Magnesium at each full minute from 0 to 30.</summary>
    public IReadOnlyList<ResidualMg> ResidualMg => [.. Enumerable.Range(0, 31).Select(minute => new ResidualMg(minute, MgPercentAt(minute)))];
}
