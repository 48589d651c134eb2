using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;

namespace MeltShop.Operations.Charging;

/// <summary>What a target asks of one quantity of the furnace iron.</summary>
/// <param name="Quantity">What is limited, linear in the percents of the furnace iron.</param>
/// <param name="Bounds">Where it must lie, in the furnace iron.</param>
/// <param name="Margin">How far inside a plan has to end.</param>
/// <param name="Window">What the grade says; its stage tells of which iron. Null where the route alone asks it.</param>
public sealed record TargetRow(LinearQuantity Quantity, Bounds Bounds, double Margin, WindowView? Window)
{
    public string Name => Quantity.Name;

    /// <summary>Whether it comes from the window of the poured iron.</summary>
    public bool IsPoured => Window is null or { Stage: WindowStage.Poured };

    public static TargetRow Of(WindowView window)
    {
        ArgumentNullException.ThrowIfNull(window);
        return new(LimitedQuantity.Of(window.Quantity), new(window.Least, window.Aim, window.Most), window.Margin, window);
    }
}
