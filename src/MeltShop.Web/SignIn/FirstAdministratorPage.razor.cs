using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.SignIn;

/// <summary>The form with which the first administrator is made, while there is none.</summary>
public sealed partial class FirstAdministratorPage
{
    [Inject]
    private FirstAdministrator First { get; set; } = null!;

    [SupplyParameterFromQuery(Name = "problem")]
    private string? Problem { get; set; }

    [SupplyParameterFromQuery(Name = "name")]
    private string? Name { get; set; }

    [SupplyParameterFromQuery(Name = "displayName")]
    private string? DisplayName { get; set; }

    // The query only chooses among our own words.
    private string? ProblemWords => Problem switch
    {
        null or "" => null,
        "old" => Text["Old"].Value,
        "code" => Text["FirstWrongCode"].Value,
        "password" => Text["FirstPassword"].Value,
        "userName" => Text["FirstUserName"].Value,
        _ => Text["FirstFailed"].Value,
    };
}
