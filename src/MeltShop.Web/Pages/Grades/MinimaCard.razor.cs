using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Grades;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Grades;

/// <summary>What the standard asks of a grade, row by row, and whether each row was read or is remembered.</summary>
public sealed partial class MinimaCard
{
    [Parameter, EditorRequired]
    public string Code { get; set; } = "";

    private GradeProperties? Properties => GradeProperties.For(Code);

    private static bool IsRemembered(Standing standing) => standing is Standing.Remembered;

    private static string Shown(double? value) => value is { } number ? NumberText.Show(Math.Round(number, 1)) : "–";

    private static string Range(double? least, double? most) => (least, most) switch
    {
        ({ }, { }) => $"{Shown(least)}–{Shown(most)}",
        (null, { }) => $"≤ {Shown(most)}",
        _ => Shown(least),
    };

    private string Wall(double? over, double? upTo) => (over, upTo) switch
    {
        ({ }, { }) => Text["OverUpTo", Shown(over), Shown(upTo)],
        ({ }, null) => Text["Over", Shown(over)],
        (null, { }) => Text["UpTo", Shown(upTo)],
        _ => Text["AnyWall"],
    };
}
