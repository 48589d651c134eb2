using MeltShop.Operations.Correcting;
using MeltShop.Records.Reading.Heats;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Who may correct what stands in a timeline; the operations themselves check again.</summary>
internal static class CorrectionRights
{
    /// <summary>The roles; none for what is not corrected there.</summary>
    public static IReadOnlyList<string> Of(IServiceProvider services, HeatView heat, TimelineRow row) => row.Kind switch
    {
        TimelineKind.Weighing => services.GetRequiredService<CorrectWeighing>().Roles,
        TimelineKind.Temperature => services.GetRequiredService<CorrectTemperature>().Roles,
        TimelineKind.Sample => services.GetRequiredService<CorrectSample>().Roles,
        TimelineKind.Tap => services.GetRequiredService<CorrectTap>().Roles,
        TimelineKind.Metal => services.GetRequiredService<CorrectMetal>().Roles,
        TimelineKind.CastingDecision when heat.Ladles.Any(ladle => ladle.Decision?.Origin == row.Origin) => services.GetRequiredService<CorrectDecision>().Roles,
        _ => [],
    };
}
