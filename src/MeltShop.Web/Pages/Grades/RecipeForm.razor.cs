using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Grades;

/// <summary>Says how iron of a grade is treated and inoculated.</summary>
public sealed partial class RecipeForm
{
    private readonly EntryForm form = new();
    private readonly SeenVersion seen = new();
    private readonly QuantityEntry target, floor, sulphur, rate, minutes, coverRate;
    private readonly TextEntry alloy, inoculant, cover;
    private IReadOnlyList<MaterialView> materials = [];

    public RecipeForm()
    {
        (target, floor) = (form.Quantity("recipe.targetMgPercent", 0, 1), form.Quantity("recipe.mgFloorPercent", 0, 1));
        sulphur = form.Quantity("recipe.sulphurLeftPercent", 0, 1);
        (alloy, inoculant) = (form.Choice("recipe.treatmentAlloyCode"), form.Choice("recipe.inoculantCode"));
        (rate, minutes) = (form.Quantity("recipe.inoculantRatePercent", 0, 10), form.Quantity("recipe.minutesToLastMould", 0, 120));
        (cover, coverRate) = (form.Choice("recipe.coverCode"), form.Quantity("recipe.coverRatePercent", 0, 5));
    }

    [Parameter, EditorRequired]
    public GradeView Grade { get; set; } = null!;

    [Parameter]
    public EventCallback Saved { get; set; }

    [Parameter]
    public EventCallback Left { get; set; }

    /// <summary>The grade is another now: the page has to read again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private SetRecipe Operation { get; set; } = null!;

    [Inject]
    private YardPage Yard { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private bool IsDuctile => Grade.Family is IronFamily.Ductile;

    private IEnumerable<Choice> Alloys => Of(UsedFor(MaterialUses.Treatment).Where(material => material.Kind != MaterialKind.Cover), Grade.Recipe?.TreatmentAlloyCode);

    private IEnumerable<Choice> Covers => Of(materials.Where(material => material.Kind == MaterialKind.Cover), Grade.Recipe?.CoverCode);

    private IEnumerable<Choice> Inoculants => Of(UsedFor(MaterialUses.Inoculation), Grade.Recipe?.InoculantCode);

    protected override async Task OnInitializedAsync()
    {
        seen.Open(Grade.Version);
        var recipe = Grade.Recipe;
        target.Showing(recipe?.TargetMgPercent);
        floor.Showing(recipe?.MgFloorPercent);
        sulphur.Showing(recipe?.SulphurLeftPercent);
        alloy.Showing(recipe?.TreatmentAlloyCode);
        inoculant.Showing(recipe?.InoculantCode);
        rate.Showing(recipe?.InoculantRatePercent);
        minutes.Showing(recipe?.MinutesToLastMould);
        cover.Showing(recipe?.CoverCode);
        coverRate.Showing(recipe?.CoverRatePercent);
        materials = await Yard.All();
    }

    protected override void OnParametersSet() => seen.Arrived(Grade.Version);

    private IEnumerable<MaterialView> UsedFor(MaterialUses use) => materials.Where(material => material.Uses.HasFlag(use));

    /// <summary>What the yard has for it, and what stands there already.</summary>
    private static List<Choice> Of(IEnumerable<MaterialView> fitting, string? standing)
    {
        var offered = fitting.Select(material => new Choice(material.Code, $"{material.Name} ({material.Code})")).ToList();
        if (standing is not null && offered.All(choice => choice.Value != standing)) offered.Add(new(standing, standing));
        return offered;
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Grade.Id, seen.Value,
            new(target.Value, floor.Value, sulphur.Value, alloy.Value, inoculant.Value, rate.Value, minutes.Value, cover.Value, coverRate.Value))));
        if (outcome is null) return;
        if (outcome.Succeeded) await Saved.InvokeAsync();
        else if (outcome.IsStale()) seen.Outdated();
        await Changed.InvokeAsync();
    }
}
