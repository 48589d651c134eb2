using MeltShop.Records.Reading.Laboratory;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What the last chill wedge of the heat showed: grey iron is inoculated by it.</summary>
public sealed partial class WedgeNote
{
    [Parameter, EditorRequired]
    public SampleView? Wedge { get; set; }
}
