using System.Security.Cryptography;
using System.Text;
using MeltShop.Operations.People;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Web.Composition;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.SignIn;

/// <summary>
/// Lets the one who started the program on an empty data folder become its first administrator: a code, printed at start and
/// held in memory only, proves that they can read what the program prints. It serves once.
/// </summary>
internal sealed class FirstAdministrator(ShopSettings settings, IDbContextFactory<RecordsContext> contexts)
{
    private readonly Lock gate = new();

    /// <summary>The code, or null where none is asked for.</summary>
    public string? Code { get; private set; }

    /// <summary>Makes a code where nobody is there yet; the demo brings its own people.</summary>
    public async Task LookAsync(CancellationToken cancellation)
    {
        if (settings.Demo) return;
        await using var context = await contexts.CreateDbContextAsync(cancellation);
        var administrators = from person in context.Users
                             join held in context.UserRoles on person.Id equals held.UserId
                             join role in context.Roles on held.RoleId equals role.Id
                             where role.Name == Role.Administrator && person.IsActive && person.PasswordHash != null // after an import nobody has one
                             select person.Id;
        if (!await administrators.AnyAsync(cancellation)) Code = StartPassword.Make();
    }

    /// <summary>Takes the code; true once, for the right one.</summary>
    public bool Take(string? code)
    {
        lock (gate)
        {
            if (Code is null || !Same(Code, code?.Trim().ToUpperInvariant() ?? "")) return false;
            Code = null;
            return true;
        }
    }

    /// <summary>Gives the code back where nobody could be made with it.</summary>
    public void GiveBack(string code)
    {
        lock (gate) Code ??= code.Trim().ToUpperInvariant();
    }

    private static bool Same(string one, string other) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(one), Encoding.UTF8.GetBytes(other));
}
