using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;

namespace MeltShop.Web.Pages.Grades;

/// <summary>Least, aim and most of one quantity of a grade that is being entered.</summary>
public sealed class WindowRow
{
    private readonly EntryForm form;
    /// <param name="form">The form that it belongs to.</param>
    /// <param name="offered">A quantity that most grades limit: nothing is said of it until a figure is typed. Null for one that a person adds.</param>
    public WindowRow(EntryForm form, string? offered)
    {
        (this.form, Offered) = (form, offered);
        Path = form.NameRow();
        Quantity = form.Choice($"{Path}.quantity", isRequired: true).Showing(offered);
        (Least, Aim, Most) = (Percent("least"), Percent("aim"), Percent("most"));
        Margin = Percent("margin");
    }

    /// <summary>What findings of this row begin with.</summary>
    public string Path { get; }

    public string? Offered { get; }
    public TextEntry Quantity { get; }
    public QuantityEntry Least { get; }
    public QuantityEntry Aim { get; }
    public QuantityEntry Most { get; }
    public QuantityEntry Margin { get; }

    /// <summary>Whether a person has said anything of it.</summary>
    public bool IsSaid => Offered is null || Figures.Any(figure => !string.IsNullOrWhiteSpace(figure.Text));

    private QuantityEntry[] Figures => [Least, Aim, Most, Margin];

    /// <summary>An empty margin is none.</summary>
    public GradeWindowInput Input(WindowStage stage) => new(stage, Quantity.Value!, Least.Value, Aim.Value, Most.Value, Margin.Value ?? 0);

    /// <summary>Takes the row out of its form.</summary>
    public void Leave()
    {
        form.Remove(Quantity);
        foreach (var figure in Figures) form.Remove(figure);
    }

    /// <summary>Its unit is that of what was chosen.</summary>
    public void Choose()
    {
        var dimension = QuantityText.Dimension(Quantity.Value);
        foreach (var bound in new[] { Least, Aim, Most }) bound.Of(dimension);
        Margin.Of(dimension == Dimension.Temperature ? Dimension.TemperatureDifference : dimension);
    }

    /// <summary>What stands behind its bounds; nothing for a pure number, and before one is chosen.</summary>
    public string Unit => Quantity.Value is { } chosen ? QuantityText.Unit(chosen) : "";

    private QuantityEntry Percent(string field) => form.Quantity($"{Path}.{field}");
}
