using MeltShop.Records.People;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.People;

/// <summary>The people of the shop, as far as others may see them.</summary>
public sealed class PeoplePage(IDbContextFactory<RecordsContext> contexts)
{
    public const int Most = 500;

    /// <summary>Everybody, those who have left last.</summary>
    /// <param name="startPassword">The claim of who has not chosen a password of their own.</param>
    public async Task<PeopleView> All(string startPassword, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var rows = await db.Users.AsNoTracking().OrderByDescending(p => p.IsActive).ThenBy(p => p.DisplayName).ThenBy(p => p.Id).Take(Most + 1)
            .Select(p => new
            {
                p.Id, p.UserName, p.DisplayName, p.IsActive, HasPassword = p.PasswordHash != null, HasPin = p.PinHash != null,
                HasStartPassword = db.UserClaims.Any(c => c.UserId == p.Id && c.ClaimType == startPassword),
                Roles = db.UserRoles.Where(held => held.UserId == p.Id).Join(db.Roles, held => held.RoleId, role => role.Id, (_, role) => role.Name!).ToList(),
            }).AsSingleQuery().ToListAsync(ct);
        return new(
            [
                .. rows.Take(Most).Select(p => new PersonAccount(
                    p.Id, p.UserName!, new(p.DisplayName, p.IsActive, [.. Role.All.Where(p.Roles.Contains)]), p.HasPassword, p.HasStartPassword, p.HasPin)),
            ],
            rows.Count > Most);
    }

    /// <summary>Who can take over at a shared station, by name: who is active and has chosen a PIN.</summary>
    public async Task<IReadOnlyList<PersonView>> WithPin(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await db.Users.AsNoTracking().Where(p => p.IsActive && p.PinHash != null).OrderBy(p => p.DisplayName)
            .Select(p => new PersonView(p.Id, p.UserName!, p.DisplayName)).ToListAsync(ct);
    }
}

/// <summary>Somebody who works here, or did.</summary>
/// <param name="Standing">What an administrator may say anew.</param>
/// <param name="HasPassword">False after an import, until an administrator gives one.</param>
/// <param name="HasStartPassword">They have not signed in and chosen one of their own yet.</param>
public sealed record PersonAccount(long Id, string UserName, PersonStanding Standing, bool HasPassword, bool HasStartPassword, bool HasPin);

/// <summary>What somebody is called and may do.</summary>
/// <param name="IsActive">False for who has left.</param>
public sealed record PersonStanding(string Name, bool IsActive, IReadOnlyList<string> Roles)
{
    /// <summary>Whether both say the same, in whatever order.</summary>
    public bool IsLike(PersonStanding? other) =>
        other is not null && (Name, IsActive) == (other.Name, other.IsActive) && Roles.ToHashSet().SetEquals(other.Roles);
}

/// <param name="More">True where there are more than are shown.</param>
public sealed record PeopleView(IReadOnlyList<PersonAccount> People, bool More);

/// <summary>Somebody who works here.</summary>
public sealed record PersonView(long Id, string UserName, string Name);
