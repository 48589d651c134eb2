namespace MeltShop.Metallurgy.Treatment;

/// <summary>How residual magnesium falls with time after the reaction. Two models are in use; data of one ladle decide between them.</summary>
public abstract partial record Fade
{
    private Fade()
    {
    }

    /// <summary>Magnesium left after some minutes.</summary>
    /// <param name="startPercent">Magnesium at minute 0, %, 0 or more.</param>
    /// <param name="minutes">Minutes from the end of the reaction, 0 or more.</param>
    /// <returns>Mass percent, never below 0.</returns>
    public abstract double After(double startPercent, double minutes);

    /// <summary>Magnesium wanted at minute 0 so that a given one is left after some minutes.</summary>
    /// <param name="endPercent">Magnesium wanted in the end, %, 0 or more.</param>
    /// <param name="minutes">Minutes from the end of the reaction, 0 or more.</param>
    /// <returns>Mass percent.</returns>
    public abstract double Before(double endPercent, double minutes);

    /// <summary>Minutes until magnesium has fallen to a floor.</summary>
    /// <param name="startPercent">Magnesium at minute 0, %.</param>
    /// <param name="floorPercent">The floor, %, over 0.</param>
    /// <returns>Minutes; 0 where it starts at or below the floor; infinity where it never falls.</returns>
    public abstract double MinutesTo(double startPercent, double floorPercent);

    /// <summary>Mg = Mg₀ · exp(−k·t).</summary>
    /// <param name="PerMinute">k, 1/min, 0 or more; 0.010 to 0.045 is usual, half-life = 0.693/k.</param>
    public sealed record Exponential(double PerMinute) : Fade
    {
        /// <inheritdoc/>
        public override double After(double startPercent, double minutes) => startPercent * Math.Exp(-PerMinute * minutes);

        /// <inheritdoc/>
        public override double Before(double endPercent, double minutes) => endPercent * Math.Exp(PerMinute * minutes);

        /// <inheritdoc/>
        public override double MinutesTo(double startPercent, double floorPercent) =>
            startPercent <= floorPercent ? 0 : Math.Log(startPercent / floorPercent) / PerMinute;
    }

    /// <summary>Mg = Mg₀ − a·t, not below 0.</summary>
    /// <param name="PercentPerMinute">a, % Mg per minute, 0 or more; 0.001 is the customary figure.</param>
    public sealed record Linear(double PercentPerMinute) : Fade
    {
        /// <inheritdoc/>
        public override double After(double startPercent, double minutes) => Math.Max(0, startPercent - PercentPerMinute * minutes);

        /// <inheritdoc/>
        public override double Before(double endPercent, double minutes) => endPercent + PercentPerMinute * minutes;

        /// <inheritdoc/>
        public override double MinutesTo(double startPercent, double floorPercent) =>
            startPercent <= floorPercent ? 0 : (startPercent - floorPercent) / PercentPerMinute;
    }
}
