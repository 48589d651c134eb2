using MeltShop.Web.Components.Fields;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Components.Reading;

/// <summary>A span of time as one says it: in minutes, hours or days.</summary>
internal static class SpanText
{
    /// <param name="text">Where its words are.</param>
    /// <param name="span">How long; what lies ahead is now.</param>
    public static string Show(IStringLocalizer<Texts.States> text, TimeSpan span) => span.TotalMinutes switch
    {
        < 90 and var minutes => text["Minutes", NumberText.Show(Math.Max(0, Math.Round(minutes)))],
        < 2880 and var minutes => text["Hours", NumberText.Show(Math.Round(minutes / 60))],
        var minutes => text["Days", NumberText.Show(Math.Round(minutes / 1440))],
    };
}
