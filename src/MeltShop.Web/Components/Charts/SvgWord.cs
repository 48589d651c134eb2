using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Charts;

/// <summary>A word in a drawing: Razor keeps the tag name of SVG text for itself.</summary>
internal static class SvgWord
{
    public static RenderFragment At(double x, double y, string anchor, string words) => builder =>
    {
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "class", "chart-word");
        builder.AddAttribute(2, "x", ChartScale.Text(x));
        builder.AddAttribute(3, "y", ChartScale.Text(y));
        builder.AddAttribute(4, "text-anchor", anchor);
        builder.AddContent(5, words);
        builder.CloseElement();
    };
}
