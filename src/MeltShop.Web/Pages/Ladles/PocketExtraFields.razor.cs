using MeltShop.Operations.Ladles;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What a card may hold beside alloy and inoculant: cover, later inoculants, copper or tin, and what the scale or whole bags gave.</summary>
public sealed partial class PocketExtraFields
{
    [Parameter, EditorRequired]
    public PocketDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public LadleView View { get; set; } = null!;

    [Parameter]
    public PocketAnswer? Answer { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    private bool IsDuctile => View.Grade.Family == IronFamily.Ductile;

    /// <summary>Whole bags that hold at least what is needed; null without a bag or a card.</summary>
    private int? Bags => Answer?.Treatment is { } treatment && Draft.BagKg.Value is { } bag ? (int)Math.Ceiling(treatment.AlloyKg / bag) : null;

    private static IReadOnlyList<LotView>? Lots(IEnumerable<MaterialView> materials, long? id) => materials.FirstOrDefault(m => m.Id == id)?.Lots;

    private static IEnumerable<Choice> Of(IEnumerable<MaterialView> materials) => materials.Select(m => new Choice(PocketDraft.Text(m.Id), m.Name));

    private Task TakeBags()
    {
        Draft.AlloyKg.Text = NumberText.Unmistakable(Bags!.Value * Draft.BagKg.Value!.Value);
        return Changed.InvokeAsync();
    }
}
