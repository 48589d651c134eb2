using MeltShop.Charging.Choosing;
using MeltShop.Web.Components.Fields;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Pages.Charge;

/// <summary>How sure a plan is, in words, and never surer than it is.</summary>
public static class SafetyText
{
    /// <summary>What solving leaves over of a plan that sits on its bound, %.</summary>
    private const double Tolerance = 1e-4;

    /// <summary>No figure is called all heats: an analysis that scatters has no end.</summary>
    private const double Most = 99.99;

    /// <summary>How often each limit holds, how often all do, how far the nearest is; what is not known is left out.</summary>
    public static string Of(PlanToChoose plan, IStringLocalizer<Texts.Charge> text)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(text);
        return string.Join(" · ", new[]
        {
            plan.Safety?.ConfidencePercent is { } sure ? text["SafetyEach", OfHeats(sure)].Value : null,
            plan.Joint is { } joint ? text["SafetyAll", OfHeats(100 * joint.All)].Value : null,
            plan.Safety?.RoomPercent is { } room ? text["SafetyRoom", NumberText.Show(Math.Floor(room + Tolerance), 0)].Value : null,
        }.OfType<string>());
    }

    /// <summary>Of a hundred heats, rounded down: whole ones, and two decimals where nearly all keep a limit.</summary>
    public static string OfHeats(double percent) => percent + Tolerance >= 99
        ? NumberText.Show(Math.Floor(100 * Math.Min(percent + Tolerance, Most) + 1e-6) / 100)
        : NumberText.Show(Math.Floor(percent + Tolerance), 0);
}
