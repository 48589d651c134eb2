using System.Globalization;
using MeltShop.Operations.People;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Own;

/// <summary>Language, decimal sign, password and PIN of the one who is signed in: a plain document, whose posts set the cookie.</summary>
public sealed partial class OwnPage
{
    /// <summary>Shows how a number reads.</summary>
    private const double Example = 3.65;

    [SupplyParameterFromQuery(Name = "problem")]
    private string? Problem { get; set; }

    [SupplyParameterFromQuery(Name = "done")]
    private string? Done { get; set; }

    [Inject]
    private IHostEnvironment Environment { get; set; } = null!;

    private IEnumerable<CultureInfo> Cultures => (Environment.IsDevelopment() ? LanguageServices.Cultures : LanguageServices.Spoken).Select(CultureInfo.GetCultureInfo);

    private static string Chosen => CultureInfo.CurrentCulture.Name;

    // The query only chooses among our own words.
    private string? ProblemWords => Problem switch
    {
        null or "" => null,
        "password.wrong" or "password.missing" => Text["PinPasswordWrong"].Value,
        "password.tooOften" => Text["PinPasswordTooOften", PasswordAgain.Within.TotalMinutes].Value,
        "startPassword" => Text["StartPassword"].Value,
        "own.password.wrong" or "own.password.missing" => Text["OwnPasswordWrong"].Value,
        "own.password.tooOften" => Text["PinPasswordTooOften", PasswordAgain.Within.TotalMinutes].Value,
        "own.password.same" => Text["OwnPasswordSame"].Value,
        "own.password.tooShort" or "own.text.missing" => Text["OwnPasswordShort"].Value,
        "pin.digits" => Text["PinDigits", SetPin.Fewest, SetPin.Most].Value,
        "busy" => Text["Busy"].Value,
        "old" => Text["Old"].Value,
        _ => Text["OwnFailed"].Value,
    };

    private string? DoneWords => Done switch
    {
        "pin" => Text["PinSet"].Value,
        "password" => Text["PasswordChanged"].Value,
        "culture" => Text["CultureChosen"].Value,
        _ => null,
    };

    private static string Words(CultureInfo culture) => $"{culture.NativeName} · {NumberText.Show(Example, 2, culture)}";
}
