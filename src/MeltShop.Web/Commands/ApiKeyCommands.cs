using System.Globalization;
using MeltShop.Web.Composition;
using MeltShop.Web.SignIn;

namespace MeltShop.Web.Commands;

/// <summary>Making, listing and ending keys from the shell: whoever may run the program on its data folder may do this.</summary>
internal static class ApiKeyCommands
{
    public static async Task<int> AddAsync(IServiceProvider services, string name)
    {
        await services.GetRequiredService<DatabasePreparation>().PrepareAsync(CancellationToken.None);
        var key = await services.GetRequiredService<ApiKeys>().AddAsync(name, CancellationToken.None);
        await Console.Error.WriteLineAsync($"A key for {name}. It is shown this once; only its hash is kept.");
        Console.WriteLine(key);
        return 0;
    }

    public static async Task<int> ListAsync(IServiceProvider services)
    {
        await services.GetRequiredService<DatabasePreparation>().PrepareAsync(CancellationToken.None);
        foreach (var key in await services.GetRequiredService<ApiKeys>().ListAsync(CancellationToken.None))
            Console.WriteLine(string.Join('\t', key.Id, key.Name, Instant(key.CreatedAt), key.RevokedAt is { } end ? Instant(end) : "valid"));
        return 0;
    }

    public static async Task<int> RevokeAsync(IServiceProvider services, string name)
    {
        await services.GetRequiredService<DatabasePreparation>().PrepareAsync(CancellationToken.None);
        var revoked = await services.GetRequiredService<ApiKeys>().RevokeAsync(name, CancellationToken.None);
        await Console.Error.WriteLineAsync(revoked == 0 ? $"No valid key has the name {name}." : $"Revoked: {revoked}");
        return revoked == 0 ? 1 : 0;
    }

    private static string Instant(DateTimeOffset instant) => instant.ToString("u", CultureInfo.InvariantCulture);
}
