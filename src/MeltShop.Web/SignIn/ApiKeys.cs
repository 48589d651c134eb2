using System.Security.Cryptography;
using System.Text;
using MeltShop.Records;
using MeltShop.Records.People;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.SignIn;

/// <summary>The keys with which machines are let in.</summary>
internal sealed class ApiKeys(IDbContextFactory<RecordsContext> contexts, TimeProvider time)
{
    /// <summary>Makes a key; it is known to the caller alone from here on.</summary>
    public async Task<string> AddAsync(string name, CancellationToken cancellation)
    {
        var secret = ApiKeySecret.Make();
        await using var context = await contexts.CreateDbContextAsync(cancellation);
        context.ApiKeys.Add(new() { Name = name, Hash = secret.Hash, CreatedAt = time.GetUtcNow() });
        await context.SaveChangesAsync(cancellation);
        return secret.Text;
    }

    /// <summary>Ends every valid key of a name, at once, and says how many there were.</summary>
    public async Task<int> RevokeAsync(string name, CancellationToken cancellation)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellation);
        var keys = await context.ApiKeys.Where(key => key.Name == name && key.RevokedAt == null).ToListAsync(cancellation);
        foreach (var key in keys) key.RevokedAt = time.GetUtcNow();
        await context.SaveChangesAsync(cancellation);
        return keys.Count;
    }

    /// <summary>All keys ever made, without what they are.</summary>
    public async Task<IReadOnlyList<ApiKey>> ListAsync(CancellationToken cancellation)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellation);
        return await context.ApiKeys.AsNoTracking().OrderBy(key => key.Id).ToListAsync(cancellation);
    }

    /// <summary>
    /// The valid key that was sent, or null. It is looked up by its hash: how long that takes says nothing about the key,
    /// for nobody can steer a hash towards one that is kept. It is asked of the database each time, so that a new key is
    /// valid and a revoked one invalid at once.
    /// </summary>
    public async Task<ApiKey?> FindAsync(string key, CancellationToken cancellation)
    {
        var hash = ApiKeySecret.HashOf(key);
        await using var context = await contexts.CreateDbContextAsync(cancellation);
        var found = await context.ApiKeys.AsNoTracking().SingleOrDefaultAsync(k => k.Hash == hash && k.RevokedAt == null, cancellation);
        return found is not null && CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(found.Hash), Encoding.ASCII.GetBytes(hash)) ? found : null;
    }
}
