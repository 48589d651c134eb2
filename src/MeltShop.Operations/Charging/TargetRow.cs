using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;

namespace MeltShop.Operations.Charging;

/// <summary>What a target asks of one quantity of the furnace iron.</summary>
/// <param name="Quantity">What is limited, linear in the percents of the furnace iron; what a treatment takes of alloy for its sulphur is part of it.</param>
/// <param name="Bounds">Where it must lie, in the furnace iron; that of an element at the most sulphur.</param>
/// <param name="Margin">How far inside a plan has to end.</param>
/// <param name="Window">What the grade says; its stage tells of which iron. Null where the route alone asks it.</param>
public sealed record TargetRow(LinearQuantity Quantity, Bounds Bounds, double Margin, WindowView? Window)
{
    public string Name => Quantity.Name;

    /// <summary>The margin of the window, in the unit of the quantity: a curved one's bounds hold it already.</summary>
    public double WindowMargin => IsCurved ? Window?.Margin ?? 0 : Margin;

    /// <summary>Whether it comes from the window of the poured iron.</summary>
    public bool IsPoured => Window is null or { Stage: WindowStage.Poured };

    /// <summary>Whether its bounds and its value are numbers of the poured iron; those of an element are turned back to the furnace iron.</summary>
    public bool IsCountedPoured => Window is { Stage: WindowStage.Poured } && WindowQuantity.Derived.Any(quantity => quantity.Name == Name);

    /// <summary>Whether a person limits it for this charge alone, in the iron as poured.</summary>
    public bool IsAdded { get; init; }

    /// <summary>Whether it stands for a quantity that is not linear, by rows of its own at each bound.</summary>
    public bool IsCurved => IsCurve(Name);

    /// <summary>
    /// The rows of a window: one where its quantity is linear. What is not gets rows of its own, whose bounds hold its margin already and which steer to no aim.
    /// </summary>
    public static IEnumerable<TargetRow> Of(WindowView window)
    {
        ArgumentNullException.ThrowIfNull(window);
        var quantity = WindowQuantity.Find(window.Quantity) ?? throw new InvalidOperationException($"{window.Quantity} was not checked before it was kept.");
        return quantity.Line is { } line
            ? [new(line, new(window.Least, window.Aim, window.Most), window.Margin, window)]
            : quantity.Rows(new(window.Least + window.Margin, null, window.Most - window.Margin)).Select(row => new TargetRow(row.Quantity, row.Bounds, 0, window));
    }

    internal static bool IsCurve(string name) => WindowQuantity.Find(name) is { Line: null };
}
