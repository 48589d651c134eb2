using MeltShop.Records.Backups;
using MeltShop.Records.Databases;
using MeltShop.Records.Exchange;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;

namespace MeltShop.Records.Tests.Exchange;

/// <summary>From SQLite to PostgreSQL, which is the one way that a shop grows.</summary>
public sealed class MovingTests : IAsyncLifetime
{
    private readonly SqliteDatabase from = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => from.InitializeAsync();

    public ValueTask DisposeAsync() => from.DisposeAsync();

    [Fact]
    public async Task Shop_MovedToPostgres_LosesNothingAndGoesOn()
    {
        var story = await HeatStory.Tell(await Foundry.Found(from), HeatState.Closed);
        var to = await EmptyDatabases.Postgres();

        var moved = await new Moving(to).From(from.File, Ct);

        Assert.True(moved.State == BackupState.Done, moved.ToString());
        Assert.Equal((await new TrailCheck(from.Contexts).Run(Ct)).HeadHash, moved.Trail!.HeadHash);
        Assert.Equal(await RowCounts.Of(from.Contexts), await RowCounts.Of(new ContextFactory(to)));
        Assert.Equal(
            RecordsJson.Text(await new HeatPage(from.Contexts).Load(story.Heat.Id, Ct)),
            RecordsJson.Text(await new HeatPage(new ContextFactory(to)).Load(story.Heat.Id, Ct)));
        await EmptyDatabases.GoesOn(to);
        Assert.Equal(BackupState.Occupied, (await new Moving(to).From(from.File, Ct)).State);
    }

    [Fact]
    public async Task Shop_TamperedWith_IsNotMoved()
    {
        var foundry = await Foundry.Found(from);
        await using (var db = from.Open()) await db.Send($"""UPDATE "Materials" SET "Code" = 'other' WHERE "Id" = {foundry.Steel.Id}""");
        var to = await EmptyDatabases.Postgres();

        Assert.Equal(BackupState.Broken, (await new Moving(to).From(from.File, Ct)).State);
        Assert.Equal(BackupState.Missing, (await new Moving(to).From(from.File + "x", Ct)).State);
    }
}
