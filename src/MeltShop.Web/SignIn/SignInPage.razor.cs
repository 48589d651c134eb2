using MeltShop.Web.Composition;
using MeltShop.Web.Demo;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.SignIn;

/// <summary>The sign-in form: a plain document whose post sets the cookie.</summary>
public sealed partial class SignInPage
{
    private const string DemoPassword = DemoFoundry.Password;

    [Inject]
    private ShopSettings Settings { get; set; } = null!;

    [Inject]
    private FirstAdministrator First { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "problem")]
    private string? Problem { get; set; }

    [SupplyParameterFromQuery(Name = "name")]
    private string? Name { get; set; }

    [SupplyParameterFromQuery(Name = "station")]
    private string? Station { get; set; }

    [SupplyParameterFromQuery(Name = SignInPaths.ReturnTo)]
    private string? ReturnTo { get; set; }

    private IReadOnlyList<DemoPerson> DemoPeople => Settings.Demo ? DemoCatalogue.Load().People : [];

    // The query only chooses among our own words: nobody can put theirs on this page.
    private string? ProblemWords => Problem switch
    {
        null or "" => null,
        "locked" => Text["Locked"].Value,
        "busy" => Text["Busy"].Value,
        "right" => Text["NotYours"].Value,
        "old" => Text["Old"].Value,
        _ => Text["Wrong"].Value,
    };
}
