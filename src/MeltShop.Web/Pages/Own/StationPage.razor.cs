using MeltShop.Records.Reading.People;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Own;

/// <summary>Who stands at this station now: a name and a PIN. A plain document whose post sets the cookie.</summary>
public sealed partial class StationPage
{
    [Inject]
    private PeoplePage Page { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "problem")]
    private string? Problem { get; set; }

    [SupplyParameterFromQuery(Name = "name")]
    private string? Name { get; set; }

    [SupplyParameterFromQuery(Name = SignInPaths.ReturnTo)]
    private string? ReturnTo { get; set; }

    private IReadOnlyList<PersonView> People { get; set; } = [];

    // The query only chooses among our own words.
    private string? ProblemWords => Problem switch
    {
        null or "" => null,
        "often" => Text["PinOften"].Value,
        "personal" => Text["PinPersonal"].Value,
        "busy" => Text["Busy"].Value,
        "old" => Text["Old"].Value,
        _ => Text["PinWrong"].Value,
    };

    protected override async Task OnInitializedAsync() => People = await Page.WithPin();
}
