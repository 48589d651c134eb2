using System.Net;
using System.Net.Http.Headers;
using MeltShop.Records;
using MeltShop.Web.Tests.Api;
using MeltShop.Web.Tests.Running;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Commands;

public sealed class CommandTests(WebApp app) : IClassFixture<WebApp>
{
    [Fact]
    public async Task ApiKeyAdd_NoDatabaseYet_MakesItAndPrintsTheKeyAsTheOnlyLine()
    {
        var folder = Path.Combine(app.DataFolder, "new", "deep");

        var run = await Shell.RunAsync(folder, "api-key", "add", "scale");

        Assert.Equal(0, run.ExitCode);
        Assert.Matches("^ms_[0-9a-f]{64}$", run.LastLine);
        Assert.Equal(run.LastLine, run.Output.Trim());
        Assert.True(File.Exists(Path.Combine(folder, "meltshop.db")));
    }

    [Fact]
    public async Task ApiKeyAdd_WhileTheServerRuns_IsValidAtOnceAndMakesNoDemo()
    {
        using var client = app.CreateClient();

        var run = await Shell.RunAsync(app.DataFolder, "api-key", "add", "spectrometer");
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", run.LastLine);
        using var response = await client.SendJsonAsync("analysis", Bodies.Analysis);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        await using var records = await app.Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(TestContext.Current.CancellationToken);
        Assert.False(await records.Users.AnyAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task ApiKeyRevoke_OfAName_EndsItsKeysAndListSaysSo()
    {
        using var client = app.CreateClient();
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", await app.AddKeyAsync("old scale"));

        var revoked = await Shell.RunAsync(app.DataFolder, "api-key", "revoke", "old scale");
        var again = await Shell.RunAsync(app.DataFolder, "api-key", "revoke", "old scale");
        var list = await Shell.RunAsync(app.DataFolder, "api-key", "list");
        using var response = await client.SendJsonAsync("analysis", Bodies.Analysis);

        Assert.Equal((0, 1), (revoked.ExitCode, again.ExitCode));
        Assert.Contains("old scale", again.Error, StringComparison.Ordinal);
        var line = Assert.Single(list.Output.Split('\n'), l => l.Contains("old scale", StringComparison.Ordinal));
        Assert.DoesNotContain("valid", line, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Unauthorized, response.StatusCode);
    }

    [Theory]
    [InlineData("melt")]
    [InlineData("api-key")]
    [InlineData("api-key", "add")]
    [InlineData("api-key", "add", "two", "names")]
    [InlineData("migrate", "now")]
    public async Task Command_NotUnderstood_SaysHowAndEndsWithTwo(params string[] words)
    {
        var run = await Shell.RunAsync(app.DataFolder, words);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("Usage:", run.Error, StringComparison.Ordinal);
        Assert.Empty(run.Output);
    }

    [Fact]
    public async Task Command_SettingWithoutSense_SaysWhichAndEndsWithOne()
    {
        var run = await Shell.RunAsync(app.DataFolder, "migrate", "--MeltShop:Database=oracle");

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("MeltShop:Database", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Serve_DataFolderThatCannotBe_SaysSoAndEndsWithOne()
    {
        var file = Path.Combine(app.DataFolder, "a-file");
        await File.WriteAllTextAsync(file, "", TestContext.Current.CancellationToken);

        var run = await Shell.RunAsync(Path.Combine(file, "folder"), "--urls", "http://127.0.0.1:0");

        Assert.Equal(1, run.ExitCode);
        Assert.Contains(file, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Migrate_Twice_IsDoneAndStaysDone()
    {
        var folder = Path.Combine(app.DataFolder, "migrated");

        Assert.Equal(0, (await Shell.RunAsync(folder, "migrate")).ExitCode);
        Assert.Equal(0, (await Shell.RunAsync(folder, "migrate")).ExitCode);
    }
}
