using MeltShop.Records.Reading.Yard;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>One percent with its scatter; a dash where it was not given, which is not zero.</summary>
public sealed partial class PercentCell
{
    [Parameter, EditorRequired]
    public MaterialPercentView? Percent { get; set; }
}
