using MudBlazor;

namespace MeltShop.Web.Components.Shell;

/// <summary>Quiet greys and one accent; app.css holds the same values for what the library does not draw.</summary>
public static class ShopTheme
{
    private static readonly string[] Family = ["Liberation Sans", "Arial", "system-ui", "sans-serif"];

    public static MudTheme Theme { get; } = new()
    {
        PaletteLight = new PaletteLight
        {
            Primary = "#1f4e79",
            PrimaryContrastText = "#ffffff",
            Secondary = "#4a535c",
            Background = "#f2f3f4",
            Surface = "#ffffff",
            TextPrimary = "#1b2026",
            TextSecondary = "#4a535c",
            Error = "#9b1c10",
            Warning = "#7a4f00",
            Success = "#1b2026",
            LinesDefault = "#c4c9ce",
            ActionDefault = "#1b2026",
        },
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "6px" },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = Family, FontSize = "1rem", LineHeight = "1.4" },
            Button = new ButtonTypography { FontFamily = Family, FontSize = "1.0625rem", FontWeight = "600", TextTransform = "none" },
        },
    };
}
