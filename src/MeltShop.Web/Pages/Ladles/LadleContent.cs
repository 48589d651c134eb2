using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>A treated ladle with what was reckoned from it.</summary>
/// <param name="Ladle">What the records say.</param>
/// <param name="Iron">Predicted from the card and the mass really tapped; null before the tap and for grey iron.</param>
/// <param name="LastMetal">The last sample of its last metal, or null.</param>
/// <param name="Verdicts">How that sample stands to the poured windows.</param>
public sealed record LadleContent(LadleView Ladle, TreatedIron? Iron, SampleView? LastMetal, IReadOnlyList<WindowVerdict> Verdicts);
