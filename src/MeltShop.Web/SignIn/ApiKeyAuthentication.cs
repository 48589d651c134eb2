using System.Security.Claims;
using System.Text.Encodings.Web;
using MeltShop.Web.Api.Answering;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;

namespace MeltShop.Web.SignIn;

/// <summary>Lets a machine in that sends <c>Authorization: Bearer KEY</c>; it is nobody's person and has no role.</summary>
internal sealed class ApiKeyAuthentication(
    IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory loggers, UrlEncoder encoder, ApiKeys keys)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, loggers, encoder)
{
    public const string SchemeName = "api-key";

    /// <summary>The policy of what machines may do.</summary>
    public const string Policy = "machine";

    /// <summary>The policy of what only a machine may that reads the records.</summary>
    public const string ReaderPolicy = "reader";

    /// <summary>The claim of a key that may read all that was recorded.</summary>
    public const string ReadsRecords = "reads-records";

    public const string HeaderScheme = "Bearer";

    /// <summary>No key is nearly so long: nothing longer is hashed.</summary>
    private const int LongestKey = 200;

    protected override async Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        var header = Request.Headers.Authorization.ToString();
        if (!header.StartsWith(HeaderScheme + " ", StringComparison.OrdinalIgnoreCase)) return AuthenticateResult.NoResult();
        var sent = header[(HeaderScheme.Length + 1)..].Trim();
        var key = sent.Length is > 0 and <= LongestKey ? await keys.FindAsync(sent, Context.RequestAborted) : null;
        if (key is null) return AuthenticateResult.Fail("The key is not known or was revoked.");
        var identity = new ClaimsIdentity([new(ClaimTypes.Name, key.Name)], SchemeName);
        if (key.ReadsRecords) identity.AddClaim(new(ReadsRecords, "yes"));
        return AuthenticateResult.Success(new(new ClaimsPrincipal(identity), SchemeName));
    }

    protected override Task HandleChallengeAsync(AuthenticationProperties properties)
    {
        Response.Headers.WWWAuthenticate = HeaderScheme;
        return ProblemAnswers
            .Refuse(StatusCodes.Status401Unauthorized, "A valid key is needed.", "Send Authorization: Bearer KEY; the command api-key add makes a key.")
            .ExecuteAsync(Context);
    }

    protected override Task HandleForbiddenAsync(AuthenticationProperties properties) => ProblemAnswers
        .Refuse(StatusCodes.Status403Forbidden, "This key may not do that.", "What people do is done with their own sign-in; what was recorded is read with a key of the command api-key add NAME reader.")
        .ExecuteAsync(Context);
}
