using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Bounds on one kind of material, for this charge only.</summary>
public sealed class GroupDraft
{
    public GroupDraft(EntryForm form, string name)
    {
        ArgumentNullException.ThrowIfNull(form);
        Name = name;
        var path = $"groups.{name}";
        MinKg = form.Mass($"{path}.minKg", 0, ChargeDraft.MostKg);
        MaxKg = form.Mass($"{path}.maxKg", 0, ChargeDraft.MostKg);
        MinPercent = form.Quantity($"{path}.minPercent", 0, 100);
        MaxPercent = form.Quantity($"{path}.maxPercent", 0, 100);
    }

    public string Name { get; }
    public QuantityEntry MinKg { get; }
    public QuantityEntry MaxKg { get; }
    public QuantityEntry MinPercent { get; }
    public QuantityEntry MaxPercent { get; }

    internal IEnumerable<FieldEntry> Fields => [MinKg, MaxKg, MinPercent, MaxPercent];

    public GroupChoice? Choice() => Fields.Any(entry => entry.Text.Length > 0)
        ? new GroupChoice(Name, MinKg.Value, MaxKg.Value, MinPercent.Value, MaxPercent.Value) : null;
}
