using System.Security.Cryptography;
using System.Text;
using MeltShop.Operations.People;
using MeltShop.Records;
using MeltShop.Records.People;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.SignIn;

/// <summary>The keys with which machines are let in.</summary>
internal sealed class ApiKeys(IDbContextFactory<RecordsContext> contexts)
{
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
