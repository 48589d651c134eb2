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

    protected override async Task<RecallContent?> Read(CancellationToken ct)
    {
        from.Showing(Enum.TryParse<RecallFrom>(FromInAddress, out var asked) && Enum.IsDefined(asked) ? asked.ToString() : nameof(RecallFrom.Material));
        of.Showing(OfInAddress);
        lot.Showing(LotInAddress);
        var (first, last) = (HistoryAddress.ReadDay(SinceInAddress), HistoryAddress.ReadDay(UntilInAddress));
        since.Showing(first is null ? null : SinceInAddress);
        until.Showing(last is null ? null : UntilInAddress);
        var depth = Math.Clamp(HeelsInAddress ?? 1, 0, RecallQuestion.MostHeels);
        heels.Showing(depth.ToString(CultureInfo.InvariantCulture));
        return of.Value is not { } name ? new(null) : new(await Page.Load(
            new(Chosen, name, lot.Value, first is { } f ? Site.Start(f) : null, last is { } l ? Site.Start(l.AddDays(1)) : null, depth), ct));
    }

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Heat or ChangeKind.TreatedLadle;

    private void Ask() => Addresses.NavigateTo(Addresses.GetUriWithQueryParameters(new Dictionary<string, object?>
    {
        ["from"] = from.Value, ["of"] = of.Value, ["lot"] = Chosen == RecallFrom.Material ? lot.Value : null,
        ["since"] = since.Value, ["until"] = until.Value, ["heels"] = heels.Value,
    }));
}
