using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Web.Pages.Castings;

/// <summary>A ladle's castings: what was poured, sampled, tested, decided and issued.</summary>
/// <param name="Asked">What the standard asks of the grade; null where it has none here.</param>
/// <param name="LastMetal">The sample that speaks for the castings, or null.</param>
/// <param name="Verdicts">How it stands to the poured windows.</param>
public sealed record CastingsContent(
    LadleView Ladle, string SiteName, GradeProperties? Asked, SampleView? LastMetal, IReadOnlyList<WindowVerdict> Verdicts, CastingsBoard.View Board);
