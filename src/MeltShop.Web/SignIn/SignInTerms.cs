using System.Collections.Concurrent;
using System.Security.Claims;

namespace MeltShop.Web.SignIn;

/// <summary>
/// Until when each sign-in holds, as its latest request has left it. A circuit makes no request for hours: it asks here whether its
/// cookie would still be taken.
/// </summary>
internal sealed class SignInTerms(TimeProvider clock)
{
    /// <summary>The claim that tells one sign-in from another of the same person, on whatever device.</summary>
    public const string Claim = "sign-in";

    private readonly ConcurrentDictionary<string, DateTimeOffset> ends = new(StringComparer.Ordinal);

    /// <summary>Gives a sign-in its number where it has none.</summary>
    public static void Number(ClaimsPrincipal user)
    {
        if (!user.HasClaim(claim => claim.Type == Claim)) user.Identities.First().AddClaim(new(Claim, Guid.NewGuid().ToString("N")));
    }

    /// <summary>A request was let in. What was renewed meanwhile stays so: requests overtake each other.</summary>
    public void Note(ClaimsPrincipal user, DateTimeOffset end)
    {
        if (user.FindFirstValue(Claim) is not { } number) return;
        if (!ends.ContainsKey(number)) Forget();
        ends.AddOrUpdate(number, end, (_, known) => end > known ? end : known);
    }

    /// <summary>Whether a request of this sign-in would be refused now; so is one of which nobody knows.</summary>
    public bool IsOver(ClaimsPrincipal user) => user.FindFirstValue(Claim) is not { } number || !ends.TryGetValue(number, out var end) || end < clock.GetUtcNow();

    private void Forget()
    {
        var now = clock.GetUtcNow();
        foreach (var (number, end) in ends)
        {
            if (end < now) ends.TryRemove(number, out _);
        }
    }
}
