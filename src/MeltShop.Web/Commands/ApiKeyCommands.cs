using System.Globalization;
using MeltShop.Operations;
using MeltShop.Operations.People;
using MeltShop.Records.People;
using MeltShop.Web.Api.Answering;
using MeltShop.Web.Composition;
using MeltShop.Web.SignIn;

namespace MeltShop.Web.Commands;

/// <summary>Making, listing and ending keys from the shell: whoever may run the program on its data folder may do this.</summary>
internal static class ApiKeyCommands
{
    public static async Task<int> AddAsync(IServiceProvider services, string name, bool readsRecords)
    {
        await services.GetRequiredService<DatabasePreparation>().PrepareAsync(CancellationToken.None);
        var secret = ApiKeySecret.Make();
        var added = await services.GetRequiredService<AddApiKey>()
            .Run(ProgramItself.Acting, new(Guid.NewGuid(), services.Now(), name, secret.Hash, readsRecords));
        if (!added.Succeeded) return await FailAsync(added.Findings.Select(Words.For));
        await Console.Error.WriteLineAsync($"A key for {name}. It is shown this once; only its hash is kept.");
        Console.WriteLine(secret.Text);
        return 0;
    }

    public static async Task<int> ListAsync(IServiceProvider services)
    {
        await services.GetRequiredService<DatabasePreparation>().PrepareAsync(CancellationToken.None);
        foreach (var key in await services.GetRequiredService<ApiKeys>().ListAsync(CancellationToken.None))
            Console.WriteLine(string.Join('\t', key.Id, key.Name, Instant(key.CreatedAt), key.RevokedAt is { } end ? Instant(end) : "valid", key.ReadsRecords ? "reader" : "machine"));
        return 0;
    }

    public static async Task<int> RevokeAsync(IServiceProvider services, string name)
    {
        await services.GetRequiredService<DatabasePreparation>().PrepareAsync(CancellationToken.None);
        var valid = (await services.GetRequiredService<ApiKeys>().ListAsync(CancellationToken.None))
            .Where(key => key.Name == name && key.RevokedAt is null)
            .ToList();
        if (valid.Count == 0) return await FailAsync([$"No valid key has the name {name}."]);
        foreach (var key in valid)
        {
            var revoked = await services.GetRequiredService<RevokeApiKey>()
                .Run(ProgramItself.Acting, new(Guid.NewGuid(), services.Now(), key.Id));
            if (!revoked.Succeeded) return await FailAsync(revoked.Findings.Select(Words.For));
        }

        await Console.Error.WriteLineAsync($"Revoked: {valid.Count}");
        return 0;
    }

    private static async Task<int> FailAsync(IEnumerable<string> reasons)
    {
        foreach (var reason in reasons) await Console.Error.WriteLineAsync(reason);
        return 1;
    }

    private static DateTimeOffset Now(this IServiceProvider services) => services.GetRequiredService<TimeProvider>().GetUtcNow();

    private static string Instant(DateTimeOffset instant) => instant.ToString("u", CultureInfo.InvariantCulture);
}
