namespace MeltShop.Web.SignIn;

/// <summary>The addresses of signing in and out.</summary>
internal static class SignInPaths
{
    public const string Page = "/sign-in";
    public const string Enter = "/sign-in/enter";
    public const string Leave = "/sign-out";
    public const string FirstAdministrator = "/first-administrator";
    public const string AddFirstAdministrator = "/first-administrator/add";
    public const string Station = "/station";
    public const string TakeOver = "/station/person";
    public const string StepDown = "/station/step-down";
    public const string Own = "/me";
    public const string OwnCulture = "/me/culture";
    public const string OwnPassword = "/me/password";
    public const string OwnPin = "/me/pin";
    public const string ReturnTo = "returnTo";

    /// <summary>
    /// An address of this app to go on to, without the forms that were open there: the next one to sign in may be another person. The first
    /// page for anything else, so that a link cannot send people away.
    /// </summary>
    public static string Local(string? address)
    {
        if (address is not ['/', not ('/' or '\\'), ..] || !Uri.IsWellFormedUriString(address, UriKind.Relative)) return "/";
        if (address.Split('?', 2) is not [var path, var query]) return address;
        var kept = query.Split('&').Where(part => !part.StartsWith("open=", StringComparison.Ordinal)).ToList();
        return kept.Count > 0 ? $"{path}?{string.Join('&', kept)}" : path;
    }
}
