using MeltShop.Charging.Choosing;
using MeltShop.Charging.Plans;
using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Charge;

/// <summary>A charge that a person makes by hand, or has taken from among several plans: it is checked and not changed.</summary>
public sealed class HandDraft
{
    private readonly EntryForm form;
    private readonly Dictionary<string, QuantityEntry> masses = [];

    /// <param name="form">The form of the charge.</param>
    /// <param name="lines">What it begins with.</param>
    /// <param name="from">The plan that was taken; null for the person's own.</param>
    public HandDraft(EntryForm form, IEnumerable<PlanLine> lines, PlanKind? from = null)
    {
        ArgumentNullException.ThrowIfNull(lines);
        (this.form, From) = (form, from);
        // To the milligram: rounded as a scale shows it, a plan that sits on a limit would miss it.
        foreach (var line in lines) Kg(line.Code).Showing(Math.Round(line.Kg, 6));
    }

    public PlanKind? From { get; }

    internal IEnumerable<FieldEntry> Fields => masses.Values;

    /// <summary>The field of a material; empty is none of it.</summary>
    public QuantityEntry Kg(string code) =>
        masses.TryGetValue(code, out var entry) ? entry : masses[code] = form.Mass($"byHand.{code}", 0, ChargeDraft.MostKg);

    public IReadOnlyList<ChosenMass> Choice() => [.. masses.Where(mass => mass.Value.Value > 0).Select(mass => new ChosenMass(mass.Key, mass.Value.Value!.Value))];

    /// <summary>Takes its fields out of the form.</summary>
    public void Leave()
    {
        foreach (var entry in masses.Values) form.Remove(entry);
    }
}
