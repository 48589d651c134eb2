using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What a person wants otherwise than the yard has it, for one material and this charge only.</summary>
public sealed class MaterialDraft
{
    private const string Out = "out";
    private const string In = "in";

    private readonly string code;
    private readonly TextEntry take;

    public MaterialDraft(EntryForm form, string code)
    {
        ArgumentNullException.ThrowIfNull(form);
        this.code = code;
        var path = $"materials.{code}";
        take = form.Choice(path);
        Price = form.PerTonne($"{path}.pricePerTonne", -1e6, 1e6);
        MinKg = form.Mass($"{path}.minKg", 0);
        MaxKg = form.Mass($"{path}.maxKg", 0);
        MinPercent = form.Quantity($"{path}.minPercent", 0, 100);
        MaxPercent = form.Quantity($"{path}.maxPercent", 0, 100);
    }

    public QuantityEntry Price { get; }
    public QuantityEntry MinKg { get; }
    public QuantityEntry MaxKg { get; }
    public QuantityEntry MinPercent { get; }
    public QuantityEntry MaxPercent { get; }

    public bool IsLeftOut => take.Value == Out;

    /// <summary>Taken although the yard has none.</summary>
    public bool IsTaken => take.Value == In;

    public bool IsChanged => take.Value is not null || Quantities.Any(entry => entry.Text.Length > 0);

    internal IEnumerable<FieldEntry> Fields => [take, .. Quantities];

    private QuantityEntry[] Quantities => [Price, MinKg, MaxKg, MinPercent, MaxPercent];

    public void LeaveOut(bool isLeftOut) => take.Text = isLeftOut ? Out : "";

    public void Take(bool isTaken) => take.Text = isTaken ? In : "";

    /// <summary>Back to what the yard says.</summary>
    public void Clear()
    {
        foreach (var field in Fields) field.Text = "";
    }

    public MaterialChoice? Choice() => !IsChanged ? null : new MaterialChoice(
        code, take.Value switch { Out => false, In => true, _ => null }, PriceText.Recorded(Price), MinKg.Value, MaxKg.Value, MaxPercent.Value, MinPercent.Value);
}
