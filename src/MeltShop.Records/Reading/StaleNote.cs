namespace MeltShop.Records.Reading;

/// <summary>Something that was used and is another now: what it was, and who corrected it when and why.</summary>
/// <param name="At">When the correction was entered.</param>
public sealed record StaleNote(StaleKind Kind, string Person, DateTimeOffset At, string? Reason);

public enum StaleKind
{
    Sample,

    /// <summary>A burn of the sample was set aside or taken back.</summary>
    Burn,
    Weighing,

    /// <summary>A weighing that was not known then: it came late, or from another heat.</summary>
    MissedWeighing,

    /// <summary>A dip, or iron that was pigged out or poured back.</summary>
    Metal,
    Tap,

    /// <summary>The analysis of a material.</summary>
    Analysis,

    /// <summary>The pocket card, by what it started from.</summary>
    PocketCard,

    /// <summary>The grade of the heat.</summary>
    Grade,

    /// <summary>The furnace of the heat.</summary>
    Furnace,

    /// <summary>The heel, by the sample or the heat that it came from.</summary>
    Heel,
}
