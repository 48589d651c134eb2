using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Running;

/// <summary>
/// Who has signed in at a program. Each person goes through the form once; what they open afterwards takes the cookies over, as another tab of
/// theirs would.
/// </summary>
internal static class SignedIn
{
    private static readonly ConditionalWeakTable<IBrowserContext, Uri> Programs = [];
    private static readonly ConcurrentDictionary<(Uri Program, string Name), IReadOnlyList<BrowserContextCookiesResult>> Known = [];

    public static void At(Uri program, IBrowserContext context) => Programs.Add(context, program);

    public static async Task RememberAsync(IBrowserContext context, string name)
    {
        if (Programs.TryGetValue(context, out var program)) Known[(program, name)] = await context.CookiesAsync();
    }

    /// <summary>Another program may get its port.</summary>
    public static void Forget(Uri program)
    {
        foreach (var known in Known.Keys.Where(known => known.Program == program)) Known.TryRemove(known, out _);
    }

    /// <summary>Whether they had signed in there before, and the context is theirs now.</summary>
    public static async Task<bool> TakeOverAsync(IBrowserContext context, string name)
    {
        if (!Programs.TryGetValue(context, out var program) || !Known.TryGetValue((program, name), out var cookies)) return false;
        await context.AddCookiesAsync(cookies.Select(cookie => new Cookie
        {
            Name = cookie.Name, Value = cookie.Value, Domain = cookie.Domain, Path = cookie.Path, Expires = cookie.Expires,
            HttpOnly = cookie.HttpOnly, Secure = cookie.Secure, SameSite = cookie.SameSite,
        }));
        return true;
    }
}
