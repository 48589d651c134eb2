using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Metres and seconds of a cored wire. It is dosed on the mass really weighed.</summary>
public static class CoredWire
{
    /// <summary>The record of the metres.</summary>
    public static Formula MetresFormula { get; } = new()
    {
        Key = "wire-metres",
        Name = "Cored wire, metres",
        Sentence = "The wire that brings the magnesium an amount of iron needs.",
        Expression = "L = 10 M (Mg + 0.76 (S_i − S_f) + 0.001 t) / (R · g)",
        Symbols =
        [
            new("M", "iron", "kg"), new("Mg", "magnesium wanted", "%"), new("S_i, S_f", "sulphur before, after", "%"), new("t", "minutes of fade", "min"),
            new("R", "recovery", "1"), new("g", "magnesium of the wire", "g/m"),
        ],
        Unit = "m",
        Sources = [Bibliography.Cabanne],
        Range = "Recovery of wire 0.30 to 0.50 (Elkem, Technical Information 9). Sulphur before not under sulphur after.",
        Code = $"{nameof(CoredWire)}.{nameof(Metres)}",
        Example = new("1000 kg, 0.045, S 0.015 → 0.010, 8 min, R 45 %, 35 g/m → 36.1 m (by hand)", () => Metres(1000, 0.045, 0.015, 0.010, 8, 45, 35), 36.06, 0.005),
    };

    /// <summary>The record of the feed time.</summary>
    public static Formula SecondsFormula { get; } = new()
    {
        Key = "wire-seconds",
        Name = "Cored wire, feed time",
        Sentence = "How long the feeder runs.",
        Expression = "t = 60 L / v",
        Symbols = [new("L", "wire", "m"), new("v", "feed speed", "m/min")],
        Unit = "s",
        Sources = [Bibliography.Practice],
        Range = "A speed at which the wire dissolves near the bottom: faster with hotter iron.",
        Code = $"{nameof(CoredWire)}.{nameof(FeedSeconds)}",
        Example = new("36.1 m at 33 m/min → 66 s (by hand)", () => FeedSeconds(36.1, 33), 65.6, 0.05),
    };

    /// <summary>Metres of wire.</summary>
    /// <param name="ironKg">Iron weighed, kg.</param>
    /// <param name="mgPercent">Magnesium wanted, %.</param>
    /// <param name="sulphurPercent">Sulphur before, %.</param>
    /// <param name="sulphurLeftPercent">Sulphur after, %.</param>
    /// <param name="minutes">Minutes of fade at 0.001 % a minute.</param>
    /// <param name="recoveryPercent">Recovery, %.</param>
    /// <param name="gramsMgPerMetre">Magnesium of the wire, g/m, over 0.</param>
    /// <returns>Metres; not a number where sulphur would rise.</returns>
    public static double Metres(
        double ironKg, double mgPercent, double sulphurPercent, double sulphurLeftPercent, double minutes, double recoveryPercent, double gramsMgPerMetre) =>
        MetresOf(MagnesiumAddition.AlloyKg(ironKg, mgPercent, sulphurPercent, sulphurLeftPercent, minutes, 100, recoveryPercent, 1450), gramsMgPerMetre);

    /// <summary>Wire that holds so much magnesium: the last step of <see cref="MetresFormula"/>.</summary>
    /// <param name="mgKg">Magnesium, kg, 0 or more.</param>
    /// <param name="gramsMgPerMetre">Magnesium of the wire, g/m, over 0.</param>
    /// <returns>Metres.</returns>
    public static double MetresOf(double mgKg, double gramsMgPerMetre) => 1000 * mgKg / gramsMgPerMetre;

    /// <summary>Magnesium that a length of wire holds: <see cref="MetresOf"/>, turned round.</summary>
    /// <param name="metres">Wire, m, 0 or more.</param>
    /// <param name="gramsMgPerMetre">Magnesium of the wire, g/m, over 0.</param>
    /// <returns>Kilograms.</returns>
    public static double MagnesiumKg(double metres, double gramsMgPerMetre) => metres * gramsMgPerMetre / 1000;

    /// <summary>Feed time.</summary>
    /// <param name="metres">Wire, m.</param>
    /// <param name="metresPerMinute">Speed, m/min, over 0.</param>
    public static double FeedSeconds(double metres, double metresPerMinute) => 60 * metres / metresPerMinute;
}
