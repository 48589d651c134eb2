using System.Text.RegularExpressions;

namespace MeltShop.Operations.Drafts;

/// <summary>Names of what drafts belong to: everybody who stands at the same one sees them.</summary>
public static partial class DraftSubject
{
    /// <summary>A coin of the bath of a heat.</summary>
    public static string BathSample(long heatId) => FormattableString.Invariant($"heat/{heatId}/sample");

    /// <summary>A coin that was sent ahead: two of one heat may be on their way at once.</summary>
    public static string Coin(long coinId) => FormattableString.Invariant($"coin/{coinId}/sample");

    /// <summary>A coin of the last metal of a treated ladle.</summary>
    public static string LastMetal(long treatedLadleId) => FormattableString.Invariant($"ladle/{treatedLadleId}/last-metal");

    /// <summary>A control sample of an instrument.</summary>
    public static string ControlSample(long instrumentId) => FormattableString.Invariant($"instrument/{instrumentId}/control-sample");

    /// <summary>Whether it has the form of one.</summary>
    public static bool IsOne(string? subject) => subject is not null && Shape().IsMatch(subject);

    [GeneratedRegex("^[a-z]{1,20}/[0-9]{1,18}/[a-z-]{1,40}$")]
    private static partial Regex Shape();
}
