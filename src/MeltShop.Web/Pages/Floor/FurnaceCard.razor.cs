using MeltShop.Operations.Laboratory;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Floor;
using MeltShop.Records.Reading.Grades;
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

    /// <summary>What of the last sample is low, high, too close to tell or was not measured although the furnace window asks for it.</summary>
    private List<string> Outside() => Grade is not { } grade ? [] :
    [
        .. QuantityJudgement.Of(Furnace.Heat!.Sample!, grade.At(WindowStage.Furnace)).Where(of => of.Standing != QuantityStanding.In).Select(of => Text[
            $"Element.{of.Standing}", QuantityText.Name(LimitText, of.Window.Quantity),
            of.Value is { } value ? NumberText.ShowBeside(QuantityText.Shown(of.Window.Quantity, value), QuantityText.Decimals(of.Window.Quantity),
                QuantityText.Shown(of.Window.Quantity, of.Window.Least), QuantityText.Shown(of.Window.Quantity, of.Window.Most)) : "–"].Value),
    ];
}
