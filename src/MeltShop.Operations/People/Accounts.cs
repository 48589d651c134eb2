using MeltShop.Metallurgy;
using MeltShop.Records;
using MeltShop.Records.People;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Options;

namespace MeltShop.Operations.People;

/// <summary>Identity's own rules for names and passwords, working inside the transaction of an operation.</summary>
internal static class Accounts
{
    public const int LeastPasswordLength = 10;

    public static UserManager<Person> In(RecordsContext db) => new(
        new UserStore<Person, IdentityRole<long>, RecordsContext, long>(db),
        Options.Create(Rules()),
        new PasswordHasher<Person>(),
        [new UserValidator<Person>()],
        [new PasswordValidator<Person>()],
        new UpperInvariantLookupNormalizer(),
        new IdentityErrorDescriber(),
        services: null!,
        NullLogger<UserManager<Person>>.Instance);

    /// <summary>Length is what protects a password; compulsory signs only make people write it down (NIST SP 800-63B, 2017).</summary>
    public static IdentityOptions Rules()
    {
        var rules = new IdentityOptions();
        rules.Password.RequiredLength = LeastPasswordLength;
        rules.Password.RequireDigit = rules.Password.RequireLowercase = rules.Password.RequireUppercase = false;
        rules.Password.RequireNonAlphanumeric = false;
        return rules;
    }

    /// <summary>Sets a password in place of the one before, and with it another security stamp.</summary>
    /// <returns>What stands against it, at the path; null where it is set.</returns>
    public static async Task<Finding?> SetPassword(RecordsContext db, Person person, string password, string path)
    {
        using var people = In(db);
        await people.RemovePasswordAsync(person);
        var set = await people.AddPasswordAsync(person, password);
        return set.Succeeded ? null : TooShort(path);
    }

    /// <summary>With our rules that is all that can be wrong with a password.</summary>
    public static Finding TooShort(string path) => new(path, "password.tooShort", LeastPasswordLength);

    /// <summary>Gives the roles to a person; a role that no one had before is made.</summary>
    public static async Task GiveRoles(RecordsContext db, Person person, IEnumerable<string> roles, CancellationToken cancellation)
    {
        foreach (var name in roles.Distinct())
        {
            var role = await db.Roles.SingleOrDefaultAsync(r => r.Name == name, cancellation);
            if (role is null)
            {
                role = new IdentityRole<long>(name) { NormalizedName = name.ToUpperInvariant() };
                db.Add(role);
                await db.SaveChangesAsync(cancellation);
            }

            db.Add(new IdentityUserRole<long> { UserId = person.Id, RoleId = role.Id });
        }

        await db.SaveChangesAsync(cancellation);
    }
}
