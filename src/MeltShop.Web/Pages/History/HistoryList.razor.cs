using System.Globalization;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.History;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.History;

/// <summary>All heats, a page at a time; filter and place stay in the address.</summary>
public sealed partial class HistoryList
{
    private readonly TextEntry number;
    private readonly TextEntry grade;
    private readonly TextEntry furnace;
    private readonly TextEntry state;
    private readonly TextEntry verdict;
    private readonly TextEntry from;
    private readonly TextEntry to;

    public HistoryList()
    {
        var form = new EntryForm();
        (number, grade, furnace, state) = (form.Words("number"), form.Choice("grade"), form.Choice("furnace"), form.Choice("state"));
        (verdict, from, to) = (form.Choice("verdict"), form.Words("from"), form.Words("to"));
    }

    [Inject]
    private HistoryPage Page { get; set; } = null!;

    [Inject]
    private HistoryChoices Choices { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "number")]
    public string? NumberInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "grade")]
    public long? GradeInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "furnace")]
    public long? FurnaceInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "state")]
    public string? StateInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "verdict")]
    public string? VerdictInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "from")]
    public string? FromInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "to")]
    public string? ToInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "after")]
    public string? PlaceInAddress { get; set; }

    private IReadOnlyList<Choice> Grades => View?.Grades ?? [];

    private IReadOnlyList<Choice> Furnaces => View?.Furnaces ?? [];

    private IEnumerable<Choice> States => Enum.GetNames<HeatState>().Select(name => new Choice(name, Text["State." + name]));

    private IEnumerable<Choice> Verdicts => Enum.GetNames<CastingVerdict>().Select(name => new Choice(name, Text["Verdict." + name]));

    private HistoryFilter InAddress => new(
        GradeInAddress, FurnaceInAddress, Enum.TryParse<HeatState>(StateInAddress, out var inState) ? inState : null,
        Enum.TryParse<CastingVerdict>(VerdictInAddress, out var decided) ? decided : null, NumberInAddress,
        HistoryAddress.ReadDay(FromInAddress) is { } first ? Site.Start(first) : null,
        HistoryAddress.ReadDay(ToInAddress) is { } last ? Site.Start(last.AddDays(1)) : null);

    protected override async Task<HistoryContent?> Read(CancellationToken ct)
    {
        number.Showing(NumberInAddress);
        grade.Showing(Address(GradeInAddress));
        furnace.Showing(Address(FurnaceInAddress));
        state.Showing(InAddress.State?.ToString());
        verdict.Showing(InAddress.Verdict?.ToString());
        from.Showing(HistoryAddress.ReadDay(FromInAddress) is null ? null : FromInAddress);
        to.Showing(HistoryAddress.ReadDay(ToInAddress) is null ? null : ToInAddress);
        var history = await Page.Load(InAddress, HistoryAddress.ReadPlace(PlaceInAddress), ct);
        var choices = await Choices.Load(ct);
        return new(history, [.. choices.Grades.Select(Line)], [.. choices.Furnaces.Select(Line)]);
    }

    protected override bool IsEmpty(HistoryContent view) =>
        view.History.Rows.Count == 0 && InAddress == new HistoryFilter() && PlaceInAddress is null;

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Heat or ChangeKind.TreatedLadle or ChangeKind.Furnace or ChangeKind.Grade;

    private static Choice Line(NamedRow row) => new(Address(row.Id)!, row.Name);

    private static string? Address(long? id) => id?.ToString(CultureInfo.InvariantCulture);

    private void Filter() => Addresses.NavigateTo(Addresses.GetUriWithQueryParameters(new Dictionary<string, object?>
    {
        ["number"] = number.Value, ["grade"] = grade.Value, ["furnace"] = furnace.Value, ["state"] = state.Value, ["verdict"] = verdict.Value,
        ["from"] = from.Value, ["to"] = to.Value, ["after"] = null,
    }));

    private string Without(string name) => Addresses.GetUriWithQueryParameter(name, (string?)null);

    private string Below(HistoryPlace place) => Addresses.GetUriWithQueryParameter("after", HistoryAddress.Write(place));
}
