using MeltShop.Records.People;
using MeltShop.Records.Reading.Finding;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Find;

/// <summary>One field for everything that has a number, a code or a name; what was looked for stays in the address.</summary>
public sealed partial class FindPlace
{
    private readonly TextEntry words = new EntryForm().Words("words");

    [Inject]
    private FindPage Page { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "words")]
    public string? WordsInAddress { get; set; }

    protected override async Task<FoundView?> Read(CancellationToken ct)
    {
        words.Showing(WordsInAddress);
        return await Page.Load(WordsInAddress, May([Role.Administrator]), ct);
    }

    protected override bool Concerns(ChangeNotice change) => change.IsOfHeats || change.Kind is ChangeKind.Order or ChangeKind.Person;

    private void Look() => Addresses.NavigateTo(Addresses.GetUriWithQueryParameter("words", words.Text.Trim() is { Length: > 0 } text ? text : null));

    private static string Address(Found row) => row.Kind switch
    {
        FoundKind.Heat or FoundKind.Coin => $"/heats/{row.Id}",
        FoundKind.Order => $"/orders/{row.Id}",
        FoundKind.Material or FoundKind.Lot => $"/yard/{row.Id}",
        FoundKind.Ladle => $"/equipment#ladle-{row.Id}",
        FoundKind.Instrument => $"/laboratory/instruments/{row.Id}",
        FoundKind.Person => $"/people#person-{row.Id}",
        FoundKind.Grade => $"/grades/{row.Id}",
        _ => $"/history?furnace={row.Id}",
    };
}
