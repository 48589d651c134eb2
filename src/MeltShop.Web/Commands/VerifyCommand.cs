using MeltShop.Records;
using MeltShop.Records.Databases;
using MeltShop.Records.Writing;
using MeltShop.Web.Composition;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Commands;

/// <summary>Checks the trail and all records against it; <c>--against</c> names an end that was printed, or a file of such ends.</summary>
internal static class VerifyCommand
{
    public static async Task<int> RunAsync(IServiceProvider services)
    {
        await services.GetRequiredService<DatabasePreparation>().PrepareAsync(CancellationToken.None);
        var against = services.GetRequiredService<IConfiguration>()["against"];
        if (await MarksAsync(against) is not { } marks)
        {
            await Console.Error.WriteLineAsync($"'{against}' is neither a file nor the end of a trail, such as 161-9f3a… with at least 16 digits of the hash.");
            return 2;
        }

        await using (var db = await services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync())
        {
            foreach (var weak in await Durability.Weaknesses(db))
                await Console.Error.WriteLineAsync($"With {weak} a power cut may take what was acknowledged: change this setting of the database.");
        }

        var report = await services.GetRequiredService<TrailCheck>().Run(marks);
        await TellAsync(report);
        if (marks.Count > 0 && report.Holds) await Console.Error.WriteLineAsync($"It passes through {marks.Count} end(s) that were kept elsewhere.");
        return report.Holds ? 0 : 1;
    }

    /// <summary>The end of the trail to standard output; what was found to standard error.</summary>
    public static async Task TellAsync(TrailReport report)
    {
        foreach (var fault in report.Faults)
            await Console.Error.WriteLineAsync($"{fault.Code}: {string.Join(' ', new object?[] { fault.Number, fault.Table, fault.Key, fault.Column }.Where(part => part is not null))}");
        await Console.Error.WriteLineAsync(report.Holds
            ? $"The trail holds: {report.Entries} entries, {report.Rows} rows as they were written."
            : $"The trail does not hold: {report.Faults.Count} fault(s) in {report.Entries} entries.");
        if (report.Holds) Console.WriteLine(new TrailMark(report.Entries, report.HeadHash));
    }

    private static async Task<IReadOnlyCollection<TrailMark>?> MarksAsync(string? against)
    {
        if (against is null) return [];
        if (File.Exists(against)) return [.. (await KeptHeads.Read(against)).Select(head => new TrailMark(head.Entries, head.Hash))];
        return TrailMark.Read(against) is { } mark ? [mark] : null;
    }
}
