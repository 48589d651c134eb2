using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.People;

/// <summary>The people of the shop, as far as others may see them.</summary>
public sealed class PeoplePage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Who can take over at a shared station, by name: who is active and has chosen a PIN.</summary>
    public async Task<IReadOnlyList<PersonView>> WithPin(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await db.Users.AsNoTracking().Where(p => p.IsActive && p.PinHash != null).OrderBy(p => p.DisplayName)
            .Select(p => new PersonView(p.Id, p.UserName!, p.DisplayName)).ToListAsync(ct);
    }
}

/// <summary>Somebody who works here.</summary>
public sealed record PersonView(long Id, string UserName, string Name);
