using Bunit;
using MeltShop.Web.Pages.Import;
using MeltShop.Web.Tests.Pages.Import;
using MeltShop.Web.Watching;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Watching;

/// <summary>What lies in the watched folder comes in whole, or waits in another with the reasons beside it.</summary>
public sealed class FolderRoundTests : ImportTest
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), $"meltshop-watched-{Guid.NewGuid():N}");

    [Fact]
    public async Task File_ThatIsSound_ComesInAndLiesInDoneWithItsReport()
    {
        var round = await Round();
        var text = await File("1;HEAT;NOW;3,61;1,52", "1;HEAT;NOW;3,63;1,54");
        await Put("a.csv", text);
        await round.Run(Cancellation);
        Assert.Empty((await Heat()).Samples); // seen once: it may be written still
        await round.Run(Cancellation);

        Assert.Equal(2, (await Heat()).Samples.Single().Burns.Count);
        Assert.Equal(["a.csv", "a.csv.report.txt"], Names("done"));
        Assert.Empty(Directory.EnumerateFiles(folder));

        await Put("a.csv", text);
        await round.Run(Cancellation);
        await round.Run(Cancellation);
        Assert.Single((await Heat()).Samples); // the same again doubles nothing
        Assert.Equal(4, Names("done").Count());
    }

    [Fact]
    public async Task File_WithOneFaultyRow_IsRefusedWholeWithItsReasons()
    {
        var round = await Round();
        await Put("b.csv", await File("1;HEAT;NOW;3,61;1,52", "2;HEAT;NOW;3.61;1,52"));
        await round.Run(Cancellation);
        await round.Run(Cancellation);

        Assert.Empty((await Heat()).Samples);
        Assert.Equal(["b.csv", "b.csv.report.txt"], Names("refused"));
        var report = await System.IO.File.ReadAllTextAsync(Path.Combine(folder, "refused", "b.csv.report.txt"), Cancellation);
        Assert.Contains("3\tC\t3.61\t", report, StringComparison.Ordinal);

        // The page of the imports says so, until somebody takes the file out.
        Assert.Contains("3\tC\t3.61\t", Listed().Find("[data-refused='b.csv']").TextContent, StringComparison.Ordinal);
        System.IO.File.Delete(Path.Combine(folder, "refused", "b.csv"));
        Assert.Empty(Listed().FindAll("[data-testid=refused-files]"));

        IRenderedComponent<RefusedFileList> Listed() => Render<RefusedFileList>(list => list.Add(l => l.Files, new RefusedFiles(new ConfigurationBuilder().AddInMemoryCollection(new Dictionary<string, string?>
        {
            ["MeltShop:ImportFolder:Path"] = folder, ["MeltShop:ImportFolder:Map"] = "burns", ["MeltShop:ImportFolder:By"] = "founder",
        }).Build()).Load()));
    }

    [Fact]
    public async Task File_ThatGrowsOrIsHeldOpen_IsLeftAlone()
    {
        var round = await Round();
        await Put("c.csv", "Nr;Heat;");
        await round.Run(Cancellation);
        await Put("c.csv", await File("1;HEAT;NOW;3,61;1,52"));
        await round.Run(Cancellation);
        Assert.Empty((await Heat()).Samples);
        await using (new FileStream(Path.Combine(folder, "c.csv"), FileMode.Open, FileAccess.ReadWrite, FileShare.None)) await round.Run(Cancellation);
        Assert.Empty((await Heat()).Samples);

        await round.Run(Cancellation);
        Assert.Single((await Heat()).Samples);
    }

    [Fact]
    public async Task File_ForAMapThatIsNotThere_WaitsInRefused()
    {
        var round = await Round("no such map");
        await Put("d.csv", await File("1;HEAT;NOW;3,61;1,52"));
        await round.Run(Cancellation);
        await round.Run(Cancellation);

        Assert.Equal(["d.csv", "d.csv.report.txt"], Names("refused"));
    }

    /// <summary>The report of the first cannot be written: a folder of that name is in its way.</summary>
    [Fact]
    public async Task File_WhoseTakingFails_StaysAndKeepsBackNoneBehindIt()
    {
        var round = await Round();
        Directory.CreateDirectory(Path.Combine(folder, "refused", "a.csv.report.txt"));
        await Put("a.csv", "no file of samples");
        await Put("b.csv", await File("1;HEAT;NOW;3,61;1,52"));
        await round.Run(Cancellation);
        var fault = await Assert.ThrowsAsync<AggregateException>(() => round.Run(Cancellation));

        Assert.StartsWith("a.csv", Assert.Single(fault.InnerExceptions).Message, StringComparison.Ordinal);
        Assert.True(System.IO.File.Exists(Path.Combine(folder, "a.csv")));
        Assert.Single((await Heat()).Samples);
        Assert.Equal(["b.csv", "b.csv.report.txt"], Names("done"));
    }

    [Fact]
    public void Settings_WithoutAFolder_WatchNothingAndHalfOfThemAreRefused()
    {
        Assert.Null(WatchedSettings.From(new ConfigurationBuilder().Build()));
        var half = new ConfigurationBuilder().AddInMemoryCollection(new Dictionary<string, string?> { ["MeltShop:ImportFolder:Path"] = folder }).Build();
        Assert.Throws<Web.Composition.SettingsException>(() => WatchedSettings.From(half));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
    }

    /// <summary>The folder's files are the founder's, who has a sign-in name and a role here.</summary>
    private async Task<FolderRound> Round(string map = "burns")
    {
        var contexts = The<Microsoft.EntityFrameworkCore.IDbContextFactory<Records.RecordsContext>>();
        await using var db = await contexts.CreateDbContextAsync(Cancellation);
        var founder = (await db.Users.FindAsync([Founder.PersonId], Cancellation))!;
        founder.NormalizedUserName = "FOUNDER";
        var role = db.Roles.FirstOrDefault(r => r.Name == Records.People.Role.Metallurgist) ?? db.Roles.Add(new(Records.People.Role.Metallurgist)).Entity;
        await db.SaveChangesAsync(Cancellation);
        db.UserRoles.Add(new() { UserId = founder.Id, RoleId = role.Id });
        await db.SaveChangesAsync(Cancellation);
        var taking = ActivatorUtilities.CreateInstance<FileTaking>(Services);
        Directory.CreateDirectory(folder);
        return new(new(folder, map, "founder"), taking, The<TimeProvider>());
    }

    private Task Put(string name, string text) => System.IO.File.WriteAllTextAsync(Path.Combine(folder, name), text, Cancellation);

    private IEnumerable<string> Names(string where) => Directory.EnumerateFiles(Path.Combine(folder, where)).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal);
}
