using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Web.Pages.Castings;

/// <summary>A ladle's castings: what was poured, sampled, tested, decided and issued.</summary>
/// <param name="Asked">What the standard asks of the grade; null where it has none here.</param>
/// <param name="LastMetal">The sample that speaks for the castings, or null.</param>
/// <param name="Verdicts">How it stands to the poured windows.</param>
public sealed record CastingsContent(
    LadleView Ladle, string SiteName, GradeProperties? Asked, SampleView? LastMetal, IReadOnlyList<WindowVerdict> Verdicts, CastingsBoard.View Board)
{
    /// <summary>Which facts are shown: the same as long as nobody adds, corrects or decides anything.</summary>
    public string Facts => string.Join(' ', new object?[] { Ladle.Treated!.Version, LastMetal?.Id, Board.GradeCode, Board.Certificates.Count }
        .Concat(Board.Pieces.SelectMany(piece => piece.Results.Select(result => (object?)result.Id).Prepend(piece.Piece.Id))));

    private bool IsLadleReleased => Ladle.Treated!.State == TreatedLadleState.Released;

    /// <summary>Its ladle is released, or one of its test units apart.</summary>
    public bool IsAnyReleased => IsLadleReleased || Board.Units.All.Any(u => u.Apart == CastingVerdict.Release);

    /// <summary>Labels of moulds whose castings may go, with whether they were poured late.</summary>
    public IEnumerable<MouldView> Released => Ladle.Pouring!.Poured.Where(m => Board.Units.MayGo(m.Label, IsLadleReleased));

    /// <summary>Test pieces that speak for castings that may go.</summary>
    public IReadOnlyList<TestedPiece> ReleasedPieces => [.. Board.Pieces.Where(p => Board.Units.MayGo(p.Piece, IsLadleReleased))];

    /// <summary>Test units that are kept back, whatever the ladle is.</summary>
    public IEnumerable<CastingUnit> Kept => Board.Units.All.Where(u => u.IsKept);
}
