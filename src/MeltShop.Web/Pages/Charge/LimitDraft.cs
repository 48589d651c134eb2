using MeltShop.Metallurgy.Route;
using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Another least or most of one quantity, for this charge only.</summary>
public sealed class LimitDraft
{
    private readonly string quantity;

    public LimitDraft(EntryForm form, string quantity)
    {
        ArgumentNullException.ThrowIfNull(form);
        this.quantity = quantity;
        var (from, to) = WindowQuantity.Find(quantity)?.Range ?? (0, 100);
        Least = form.Quantity($"limits.{quantity}.least", from, to).Of(QuantityText.Dimension(quantity));
        Most = form.Quantity($"limits.{quantity}.most", from, to).Of(QuantityText.Dimension(quantity));
    }

    public QuantityEntry Least { get; }
    public QuantityEntry Most { get; }

    public bool IsChanged => Fields.Any(entry => entry.Text.Length > 0);

    internal IEnumerable<FieldEntry> Fields => [Least, Most];

    /// <summary>Back to what the grade says.</summary>
    public void Clear()
    {
        foreach (var field in Fields) field.Text = "";
    }

    public LimitChoice? Choice() => IsChanged ? new LimitChoice(quantity, Least.Value, Most.Value) : null;
}
