using MeltShop.Records.Backups;
using MeltShop.Web.Tests.Running;

namespace MeltShop.Web.Tests.Commands;

/// <summary>Backup, restore, export, import and verify as somebody at the shell meets them, while the server runs.</summary>
public sealed class CopyCommandTests(WebApp app) : IClassFixture<WebApp>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Backup_OfARunningShop_IsRestoredElsewhereAndPassesThroughItsHead()
    {
        await app.AddPersonAsync($"p{Guid.NewGuid():N}", "melter");
        var backup = Path.Combine(app.DataFolder, "backups", "monday.db");
        var elsewhere = Path.Combine(app.DataFolder, "elsewhere");

        var written = await Shell.RunAsync(app.DataFolder, "backup", backup);
        var again = await Shell.RunAsync(app.DataFolder, "backup", backup);
        var restored = await Shell.RunAsync(elsewhere, "restore", backup);
        var verified = await Shell.RunAsync(elsewhere, "verify", "--against", BackupHead.FileOf(backup));

        Assert.True(written.ExitCode == 0, written.Error);
        Assert.Equal(1, again.ExitCode);
        Assert.True(restored.ExitCode == 0, restored.Error);
        Assert.True(verified.ExitCode == 0, verified.Error);
        Assert.Matches("^[1-9][0-9]*-[0-9a-f]{64}$", written.LastLine);
        Assert.Equal((written.LastLine, written.LastLine), (restored.LastLine, verified.LastLine));
        Assert.Equal(1, (await Shell.RunAsync(elsewhere, "restore", backup)).ExitCode);
    }

    [Fact]
    public async Task Export_OfARunningShop_IsImportedIntoAnEmptyInstallation()
    {
        await app.AddPersonAsync($"p{Guid.NewGuid():N}", "melter");
        var file = Path.Combine(app.DataFolder, "shop.zip");
        var elsewhere = Path.Combine(app.DataFolder, "imported");

        var exported = await Shell.RunAsync(app.DataFolder, "export", file);
        var imported = await Shell.RunAsync(elsewhere, "import", file);

        Assert.True(exported.ExitCode == 0, exported.Error);
        Assert.True(imported.ExitCode == 0, imported.Error);
        Assert.Equal(exported.LastLine, imported.LastLine);
        Assert.Equal(1, (await Shell.RunAsync(elsewhere, "import", file)).ExitCode);
    }

    [Theory]
    [InlineData("an end", 2)]
    [InlineData("1-aaaaaaaaaaaaaaaa", 1)]
    public async Task Verify_AgainstAnEndThatNeverWas_SaysSo(string end, int code)
    {
        await app.AddPersonAsync($"p{Guid.NewGuid():N}", "melter");

        var run = await Shell.RunAsync(app.DataFolder, "verify", "--against", end);

        Assert.Equal((code, ""), (run.ExitCode, run.Output));
    }

    [Fact]
    public async Task Move_OntoSqlite_SaysWhatItNeeds()
    {
        var run = await Shell.RunAsync(app.DataFolder, "move", Path.Combine(app.DataFolder, "meltshop.db"));

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("postgres", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Head_OfEachDay_IsKeptOutsideTheDatabaseOnce()
    {
        await app.AddPersonAsync($"p{Guid.NewGuid():N}", "melter");
        var contexts = (Microsoft.EntityFrameworkCore.IDbContextFactory<Records.RecordsContext>)app.Services.GetService(typeof(Microsoft.EntityFrameworkCore.IDbContextFactory<Records.RecordsContext>))!;
        var file = Path.Combine(app.DataFolder, $"{Guid.NewGuid():N}.jsonl");
        var monday = new DateTimeOffset(2026, 3, 2, 6, 0, 0, TimeSpan.Zero);

        Assert.NotNull(await Records.Writing.KeptHeads.AddDaily(file, contexts, monday, Ct));
        Assert.Null(await Records.Writing.KeptHeads.AddDaily(file, contexts, monday.AddHours(17), Ct));
        await app.AddPersonAsync($"p{Guid.NewGuid():N}", "melter");
        Assert.NotNull(await Records.Writing.KeptHeads.AddDaily(file, contexts, monday.AddHours(18), Ct));

        Assert.Equal(2, (await Records.Writing.KeptHeads.Read(file, Ct)).Count);
        Assert.Equal(0, (await Shell.RunAsync(app.DataFolder, "verify", "--against", file)).ExitCode);
    }
}
