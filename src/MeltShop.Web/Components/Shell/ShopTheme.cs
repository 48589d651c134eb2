using MudBlazor;

namespace MeltShop.Web.Components.Shell;

/// <summary>The library's letters and corners. Its colours and sizes come from theme.css, by way of library.css: no colour stands in two places.</summary>
public static class ShopTheme
{
    private static readonly string[] Family = ["MeltShop Sans", "system-ui", "sans-serif"];

    public static MudTheme Theme { get; } = new()
    {
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "6px" },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = Family, FontSize = "1rem", LineHeight = "1.4" },
            Button = new ButtonTypography { FontFamily = Family, FontSize = "1.0625rem", FontWeight = "600", TextTransform = "none" },
        },
    };
}
