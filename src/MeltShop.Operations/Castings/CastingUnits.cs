using MeltShop.Records;
using MeltShop.Records.Castings;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Castings;

/// <summary>A test unit of a ladle: castings with the pieces that speak for them.</summary>
/// <param name="Moulds">Labels of its moulds; empty where nobody said which.</param>
/// <param name="Apart">What was decided about it apart from its ladle; null where nothing was.</param>
public sealed record CastingUnit(string Name, IReadOnlyList<string> Moulds, CastingVerdict? Apart)
{
    public bool IsKept => Apart is CastingVerdict.Hold or CastingVerdict.Scrap;

    public bool Holds(string mould) => Moulds.Contains(mould, StringComparer.OrdinalIgnoreCase);
}

/// <summary>The test units of a ladle with how each stands apart from it: one place for the page, the decisions and the certificate.</summary>
public sealed record CastingUnits(IReadOnlyList<CastingUnit> All)
{
    /// <summary>Labels as one text, and back; a label holds no line break.</summary>
    public static string? Text(IEnumerable<string> moulds) => string.Join('\n', moulds.Select(m => m.Trim()).Distinct()) is { Length: > 0 } text ? text : null;

    /// <inheritdoc cref="Text"/>
    public static IReadOnlyList<string> Moulds(string? text) => text?.Split('\n') ?? [];

    public CastingUnit? Of(string name) => All.FirstOrDefault(u => IsSame(u.Name, name));

    /// <summary>False for what is held or scrapped apart; and for what no unit released, where its ladle is not released.</summary>
    public bool MayGo(string mould, bool isLadleReleased) =>
        !All.Any(u => u.IsKept && u.Holds(mould)) && (isLadleReleased || All.Any(u => u.Apart == CastingVerdict.Release && u.Holds(mould)));

    /// <inheritdoc cref="MayGo(string,bool)"/>
    public bool MayGo(TestPiece piece, bool isLadleReleased)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var unit = Of(piece.TestUnit);
        return unit?.IsKept != true && (isLadleReleased || unit?.Apart == CastingVerdict.Release);
    }

    public static bool IsSame(string one, string other) => string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);

    public static async Task<CastingUnits> Load(RecordsContext db, long treatedLadleId, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(db);
        var pieces = await db.InForce<TestPiece>().AsNoTracking().Where(p => p.TreatedLadleId == treatedLadleId && !p.IsWithdrawn).OrderBy(p => p.Id).ToListAsync(cancellation);
        if (pieces.Count == 0) return new([]);
        var decisions = await db.InForce<CastingDecision>().AsNoTracking().Where(d => d.TreatedLadleId == treatedLadleId && d.TestUnit != null)
            .OrderBy(d => d.Id).Select(d => new { Unit = d.TestUnit!, d.Verdict }).ToListAsync(cancellation);
        return new([.. pieces.GroupBy(p => p.TestUnit.Trim(), StringComparer.OrdinalIgnoreCase).Select(unit => new CastingUnit(
            unit.Key, [.. unit.SelectMany(p => Moulds(p.Moulds)).Distinct()], decisions.LastOrDefault(d => IsSame(d.Unit, unit.Key))?.Verdict))]);
    }
}
