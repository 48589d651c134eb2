using System.Globalization;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Recall;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.History;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Recalls;

/// <summary>From something suspect to the castings that it may be in; the question stays in the address, and the list goes on paper.</summary>
public sealed partial class RecallSheet
{
    private readonly TextEntry from;
    private readonly TextEntry of;
    private readonly TextEntry lot;
    private readonly TextEntry since;
    private readonly TextEntry until;
    private readonly TextEntry heels;

    public RecallSheet()
    {
        var form = new EntryForm();
        (from, of, lot) = (form.Choice("from", isRequired: true), form.Words("of"), form.Words("lot"));
        (since, until, heels) = (form.Words("since"), form.Words("until"), form.Choice("heels", isRequired: true));
    }

    [Inject]
    private RecallPage Page { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "from")]
    public string? FromInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "of")]
    public string? OfInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "lot")]
    public string? LotInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "since")]
    public string? SinceInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "until")]
    public string? UntilInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "heels")]
    public int? HeelsInAddress { get; set; }

    private RecallFrom Chosen => Enum.TryParse<RecallFrom>(from.Text, out var chosen) ? chosen : RecallFrom.Material;

    private int Released => View!.Recall!.Rows.Count(r => r.Ladle.State == TreatedLadleState.Released);

    private IEnumerable<Choice> Sources => Enum.GetNames<RecallFrom>().Select(name => new Choice(name, Text["From." + name]));

    private static IEnumerable<Choice> HeelChoices => Enumerable.Range(0, RecallQuestion.MostHeels + 1)
        .Select(n => new Choice(n.ToString(CultureInfo.InvariantCulture), NumberText.Show(n, 0)));

    /// <summary>A day from its start, or an instant of it: another page asks to the microsecond, a person by days.</summary>
    private AskedTime? Start => Asked(SinceInAddress, 0);

    /// <summary>Until the end of a day, or until before an instant of it.</summary>
    private AskedTime? End => Asked(UntilInAddress, 1);

    protected override async Task<RecallContent?> Read(CancellationToken ct)
    {
        from.Showing(Enum.TryParse<RecallFrom>(FromInAddress, out var asked) && Enum.IsDefined(asked) ? asked.ToString() : nameof(RecallFrom.Material));
        of.Showing(OfInAddress);
        lot.Showing(LotInAddress);
        var (start, end) = (Start, End);
        since.Showing(Day(start?.Day));
        until.Showing(Day(end?.Day));
        var depth = Math.Clamp(HeelsInAddress ?? 1, 0, RecallQuestion.MostHeels);
        heels.Showing(depth.ToString(CultureInfo.InvariantCulture));
        return of.Value is not { } name ? new(null) : new(await Page.Load(
            new(Chosen, name, lot.Value, start?.At, end?.At, depth), ct));
    }

    protected override bool Concerns(ChangeNotice change) => change.IsOfHeats;

    private AskedTime? Asked(string? text, int daysLater) =>
        HistoryAddress.ReadInstant(text) is { } instant ? new(Site.DayOf(instant), instant, IsExact: true)
        : HistoryAddress.ReadDay(text) is { } day ? new(day, Site.Start(day.AddDays(daysLater)), IsExact: false) : null;

    private string? Exact(string key, AskedTime? asked) => asked is { IsExact: true } exact ? Text[key, Site.DayAndTime(exact.At)].Value : null;

    private static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>An instant stands until somebody chooses another day.</summary>
    private static string? Kept(string? typed, DateOnly? day, string? inAddress) => typed is not null && typed == Day(day) ? inAddress : typed;

    private void Ask() => Addresses.NavigateTo(Addresses.GetUriWithQueryParameters(new Dictionary<string, object?>
    {
        ["from"] = from.Value, ["of"] = of.Value, ["lot"] = Chosen == RecallFrom.Material ? lot.Value : null,
        ["since"] = Kept(since.Value, Start?.Day, SinceInAddress), ["until"] = Kept(until.Value, End?.Day, UntilInAddress), ["heels"] = heels.Value,
    }));

    private sealed record AskedTime(DateOnly Day, DateTimeOffset At, bool IsExact);
}
