using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>One percent with its scatter; a dash where it was not given, which is not zero.</summary>
public sealed partial class PercentCell
{
    [Parameter, EditorRequired]
    public MaterialPercentView? Percent { get; set; }

    /// <summary>All digits that were given; of one percent and more no zeros behind the second decimal.</summary>
    public static string Shown(double percent, Element element) => NumberText.ShowAtLeast(percent, percent >= 1 ? Math.Min(2, element.Decimals) : element.Decimals);
}
