using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Another least or most of one quantity, for this charge only.</summary>
public sealed class LimitDraft
{
    private readonly string quantity;

    public LimitDraft(EntryForm form, string quantity)
    {
        ArgumentNullException.ThrowIfNull(form);
        this.quantity = quantity;
        Least = form.Quantity($"limits.{quantity}.least", 0, 100);
        Most = form.Quantity($"limits.{quantity}.most", 0, 100);
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
