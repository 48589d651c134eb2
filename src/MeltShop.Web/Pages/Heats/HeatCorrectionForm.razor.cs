using System.Globalization;
using MeltShop.Operations.Correcting;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Sites;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Puts the grade, the furnace, the start, the end or the heel of a heat right, with a reason.</summary>
public sealed partial class HeatCorrectionForm
{
    /// <summary>Two days either way, min.</summary>
    private const double MostMinutes = 2880;

    private readonly EntryForm form = new();
    private readonly TextEntry grade;
    private readonly QuantityEntry earlier;
    private readonly QuantityEntry endEarlier;
    private readonly TextEntry furnace;
    private readonly QuantityEntry heel;
    private readonly TextEntry reason;
    private IReadOnlyList<Choice> choices = [];
    private IReadOnlyList<Choice> furnaces = [];
    private readonly SeenVersion seen = new();

    public HeatCorrectionForm()
    {
        grade = form.Choice("gradeId", isRequired: true);
        earlier = form.Quantity("startedAt", -MostMinutes, MostMinutes);
        endEarlier = form.Quantity("closedAt", -MostMinutes, MostMinutes);
        furnace = form.Choice("furnaceId", isRequired: true);
        heel = form.Mass("heelKg", 0);
        reason = form.Words("reason", isRequired: true);
    }

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    [Inject]
    private GradesPage Grades { get; set; } = null!;

    [Inject]
    private FurnacesPage Furnaces { get; set; } = null!;

    [Inject]
    private ShopSite Site { get; set; } = null!;

    [Inject]
    private CorrectHeat Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    protected override async Task OnInitializedAsync()
    {
        seen.Open(Heat.Heat.Version);
        grade.Showing(Id(Heat.Heat.GradeId));
        furnace.Showing(Id(Heat.Heat.FurnaceId));
        furnaces = [.. (await Furnaces.Load()).Furnaces.Select(one => new Choice(Id(one.Id), one.Name))];
        choices = [.. (await Grades.All()).Select(one => new Choice(Id(one.Id), one.Code))];
    }

    protected override void OnParametersSet() => seen.Arrived(Heat.Heat.Version);

    private async Task Save()
    {
        DateTimeOffset? startedAt = earlier.Value is { } minutes and not 0 ? Heat.Heat.StartedAt.AddMinutes(-minutes) : null;
        DateTimeOffset? closedAt = endEarlier.Value is { } ended and not 0 ? Heat.Heat.ClosedAt?.AddMinutes(-ended) : null;
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Heat.Heat.Id, seen.Value, long.Parse(grade.Value!, CultureInfo.InvariantCulture), startedAt, reason.Value!, heel.Value)
        {
            FurnaceId = long.Parse(furnace.Value!, CultureInfo.InvariantCulture), ClosedAt = closedAt,
        }));
        if (outcome?.Succeeded == true) await Done.InvokeAsync();
        else if (outcome?.IsStale() == true) seen.Outdated();
    }

    private static string Id(long id) => id.ToString(CultureInfo.InvariantCulture);
}
