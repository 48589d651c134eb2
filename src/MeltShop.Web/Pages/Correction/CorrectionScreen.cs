using MeltShop.Operations.Correcting;
using MeltShop.Records.Reading.Heats;

namespace MeltShop.Web.Pages.Correction;

/// <summary>A heat whose bath may be corrected.</summary>
/// <param name="Facts">Null where no bath sample counts yet.</param>
public sealed record CorrectionScreen(CorrectionPageView View, CorrectionFacts? Facts);

internal static class MaterialNames
{
    /// <summary>The name of a material, or its code where it is no longer offered.</summary>
    public static string NameOf(this CorrectionFacts facts, string code) => facts.View.Materials.FirstOrDefault(m => m.Code == code)?.Name ?? code;
}
