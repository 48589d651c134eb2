using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;

namespace MeltShop.Web.Pages.Heats;

/// <summary>A heat, and what lies in the yard to be weighed in.</summary>
public sealed record HeatScreen(HeatView Heat, IReadOnlyList<MaterialView> Yard);

/// <summary>A part of the heat's page. Which comes first depends on how far the heat is.</summary>
public enum HeatSection
{
    Weighing,
    Temperatures,
    Samples,
    Ladles,
    Metal,
    End,
}
