using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>The fields of a pocket card; grey iron has none of the magnesium.</summary>
public sealed partial class PocketFields
{
    [Parameter, EditorRequired]
    public PocketDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public LadleView View { get; set; } = null!;

    [Parameter]
    public EventCallback Changed { get; set; }

    private bool IsDuctile => View.Grade.Family == IronFamily.Ductile;

    /// <summary>Something of the recipe was refused: it must not hide.</summary>
    private bool IsAmiss => Draft.Recipe.Any(entry => entry.Finding is not null);

    private string RecipeLine => IsDuctile
        ? Text["RecipeLine", NameOf(View.Alloys, Draft.AlloyId), Said(Draft.TargetMg), Said(Draft.MgFloor), Said(Draft.Minutes), NameOf(View.Inoculants, Draft.InoculantId), Said(Draft.InoculantRate)]
        : Text["RecipeLineGrey", NameOf(View.Inoculants, Draft.InoculantId), Said(Draft.InoculantRate)];

    private IEnumerable<Choice> Ladles =>
        View.Ladles.Select(l => new Choice(PocketDraft.Text(l.Id), Text["LadleTakes", l.Name, MassText.Show(l.FillLimitKg, 0)]));

    private static string Said(QuantityEntry entry) => string.IsNullOrWhiteSpace(entry.Text) ? "–" : entry.Text;

    private static string NameOf(IEnumerable<MaterialView> materials, long? id) => materials.FirstOrDefault(m => m.Id == id)?.Name ?? "–";

    private static IReadOnlyList<LotView>? Lots(IEnumerable<MaterialView> materials, long? id) => materials.FirstOrDefault(m => m.Id == id)?.Lots;

    private static IEnumerable<Choice> Of(IEnumerable<MaterialView> materials) =>
        materials.Where(m => m.Kind != MaterialKind.Cover).Select(m => new Choice(PocketDraft.Text(m.Id), m.Name));
}
