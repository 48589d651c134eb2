using MeltShop.Operations.Yard;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>What lies in the yard; the filter stays in the address.</summary>
public sealed partial class YardList
{
    private readonly TextEntry kind;
    private readonly TextEntry search;

    public YardList()
    {
        var filter = new EntryForm();
        kind = filter.Choice("kind");
        search = filter.Words("text");
    }

    [Inject]
    private YardPage Page { get; set; } = null!;

    [Inject]
    private AddMaterial Adding { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "kind")]
    public string? KindInAddress { get; set; }

    [SupplyParameterFromQuery(Name = "text")]
    public string? TextInAddress { get; set; }

    private IEnumerable<Choice> Kinds => Enum.GetNames<MaterialKind>().Select(name => new Choice(name, Text["Kind." + name]));

    private string Query => new Uri(Addresses.Uri).Query;

    private YardFilter InAddress => new(Enum.TryParse<MaterialKind>(KindInAddress, out var chosen) ? chosen : null, TextInAddress, WithInactive: !string.IsNullOrWhiteSpace(TextInAddress));

    protected override async Task<YardView?> Read(CancellationToken ct)
    {
        kind.Showing(InAddress.Kind?.ToString());
        search.Showing(TextInAddress);
        return await Page.Load(InAddress, ct);
    }

    protected override bool IsEmpty(YardView view) => view.Materials.Count == 0 && InAddress is { Kind: null, Text: null };

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Material or ChangeKind.Site;

    private void Filter() => Addresses.NavigateTo(Addresses.GetUriWithQueryParameters(
        new Dictionary<string, object?> { ["kind"] = kind.Value, ["text"] = search.Value }));
}
