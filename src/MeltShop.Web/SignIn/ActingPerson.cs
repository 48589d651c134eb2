using System.Globalization;
using System.Security.Claims;
using MeltShop.Operations;
using Microsoft.AspNetCore.Components.Authorization;

namespace MeltShop.Web.SignIn;

/// <summary>
/// Who acts in this scope, be it a circuit or a request: the one place from which operations learn it. A request hands its
/// person over in <see cref="SignInEndpoints.UseActingPerson"/>; a circuit does so by itself.
/// </summary>
public sealed class ActingPerson(AuthenticationStateProvider state)
{
    /// <summary>Shown where nobody named the station.</summary>
    private const string UnnamedStation = "browser";

    /// <summary>The person, or null where nobody is signed in.</summary>
    public async Task<Acting?> FindAsync()
    {
        var user = (await state.GetAuthenticationStateAsync()).User;
        if (!long.TryParse(user.FindFirstValue(PersonClaims.Id), NumberStyles.None, CultureInfo.InvariantCulture, out var id)) return null;
        return new Acting(
            id,
            user.FindFirstValue(PersonClaims.Name) ?? "",
            user.FindFirstValue(PersonClaims.Station) ?? UnnamedStation,
            user.Roles());
    }

    /// <summary>The person.</summary>
    /// <exception cref="InvalidOperationException">Nobody is signed in: the route lacks its rule.</exception>
    public async Task<Acting> GetAsync() => await FindAsync() ?? throw new InvalidOperationException("Nobody is signed in, yet something is to be done.");
}
