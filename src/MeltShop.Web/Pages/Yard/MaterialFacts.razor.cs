using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

public sealed partial class MaterialFacts
{
    [Parameter, EditorRequired]
    public MaterialView Material { get; set; } = null!;

    /// <summary>Whether the person may say what its yield is.</summary>
    [Parameter]
    public bool IsOffered { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    private IEnumerable<MaterialUses> Uses =>
        Enum.GetValues<MaterialUses>().Where(use => use is not MaterialUses.None && Material.Uses.HasFlag(use));
}
