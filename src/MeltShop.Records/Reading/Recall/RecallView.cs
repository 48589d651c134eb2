using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Records.Reading.Recall;

/// <summary>How the suspect iron came into a ladle.</summary>
public enum RecallWay
{
    /// <summary>It is the ladle, or a ladle of the heat, that was asked for, or the material went in there.</summary>
    Itself,

    /// <summary>What was left of another ladle was poured onto it.</summary>
    FromLadle,

    /// <summary>What was left of a ladle was poured back into its furnace.</summary>
    PouredBack,

    /// <summary>It was in the furnace when the heat before had ended.</summary>
    Heel,
}

/// <summary>The castings that something suspect may be in.</summary>
/// <param name="IsFound">False where nothing has that name.</param>
/// <param name="Rows">By heat and ladle, the oldest first.</param>
/// <param name="WithoutCastings">Numbers of heats that it is in and that no ladle was tapped of afterwards.</param>
/// <param name="IsMore">There are more ladles than are shown.</param>
public sealed record RecallView(bool IsFound, IReadOnlyList<RecallRow> Rows, IReadOnlyList<string> WithoutCastings, bool IsMore)
{
    public static RecallView Unknown { get; } = new(false, [], [], false);
}

/// <summary>A treated ladle on the list.</summary>
/// <param name="Through">The heat or ladle that it came through; null where it did not.</param>
/// <param name="Heels">How many heels lie between.</param>
/// <param name="IsSure">False where the lot was not recorded: it may be in it.</param>
/// <param name="Moulds">Moulds that were ticked off.</param>
/// <param name="Certificates">Number and revision of what was issued.</param>
public sealed record RecallRow(
    TreatedLadleView Ladle, string HeatNumber, DateTimeOffset StartedAt, string GradeCode, RecallWay Way, string? Through, int Heels, bool IsSure,
    IReadOnlyList<string> Moulds, IReadOnlyList<RecallCertificate> Certificates);

public sealed record RecallCertificate(long Id, string Number, int Revision);
