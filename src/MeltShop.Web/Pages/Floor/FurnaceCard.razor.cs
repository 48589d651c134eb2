using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Floor;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Floor;

/// <summary>A furnace and its heat; colour only for an element that is not inside its window.</summary>
public sealed partial class FurnaceCard
{
    [Parameter, EditorRequired]
    public FloorFurnace Furnace { get; set; } = null!;

    /// <summary>The grade of the heat, whose furnace window the sample is held against.</summary>
    [Parameter]
    public GradeView? Grade { get; set; }

    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }

    private long Minutes(DateTimeOffset start) => (long)Math.Max(0, (Now - start).TotalMinutes);

    /// <summary>What of the last sample is low, high or was not measured although the furnace window asks for it.</summary>
    private List<string> Outside() =>
    [
        .. (Grade?.At(WindowStage.Furnace) ?? [])
            .Select(window => Element.TryParse(window.Quantity, out var element) ? Words(window, element, Furnace.Heat!.Sample!) : null)
            .OfType<string>(),
    ];

    private string? Words(WindowView window, Element element, SampleView sample)
    {
        var value = sample.Mean(element);
        return LimitVerdicts.Of(value, window.Least, window.Most) switch
        {
            LimitVerdict.In => null,
            LimitVerdict.Unknown => Text["Element.Unknown", element.Symbol].Value,
            var verdict => Text["Element." + verdict, element.Symbol, NumberText.ShowBeside(value!.Value, element.Decimals, window.Least, window.Most)].Value,
        };
    }
}
