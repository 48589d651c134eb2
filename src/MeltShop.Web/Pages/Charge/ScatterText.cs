using MeltShop.Charging.Plans;
using MeltShop.Web.Components.Fields;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Pages.Charge;

/// <summary>How often heats of a plan end outside a limit, in words.</summary>
internal static class ScatterText
{
    /// <summary>Fewer of a hundred heats are not worth a word.</summary>
    private const double WorthSaying = 0.005;

    /// <summary>Null where next to none does, or no scatter is known.</summary>
    public static string? Of(LimitOutcome limit, IStringLocalizer<Texts.Charge> text) =>
        limit.Outside() is var (below, above) && below + above >= WorthSaying ? text["EndOutside", NumberText.Show(100 * (below + above), 0)].Value : null;
}
