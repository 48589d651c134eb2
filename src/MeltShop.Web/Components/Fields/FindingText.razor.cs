using System.Globalization;
using MeltShop.Metallurgy;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>A finding in the person's language, its numbers with the person's decimal sign.</summary>
public sealed partial class FindingText
{
    [Parameter, EditorRequired]
    public Finding Finding { get; set; } = null!;

    private object[] Arguments => [.. Finding.Arguments.Select(argument => argument switch
    {
        double number => new FindingNumber(number),
        DateTimeOffset instant => Services.GetService<ShopSite>()?.DayAndTime(instant) ?? instant.ToString("u", CultureInfo.CurrentCulture),
        _ => argument,
    })];

    [Inject]
    private IServiceProvider Services { get; set; } = null!;
}
