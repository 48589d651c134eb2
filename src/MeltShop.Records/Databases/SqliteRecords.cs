using MeltShop.Records.Keeping;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace MeltShop.Records.Databases;

/// <summary>The records in a SQLite file.</summary>
public sealed class SqliteRecords(DbContextOptions<SqliteRecords> options) : RecordsContext(options)
{
    // A write transaction is immediate: the whole file is locked already.
    internal override Task<TrailHead> LockHead(CancellationToken ct) => TrailHeads.SingleAsync(ct);

    /// <inheritdoc/>
    public override Task LockFurnace(long furnaceId, CancellationToken ct) => Task.CompletedTask; // the whole file is locked already

    /// <inheritdoc/>
    public override Task LockMaterial(long materialId, CancellationToken ct) => Task.CompletedTask;

    /// <inheritdoc/>
    public override Task LockLadle(long ladleId, CancellationToken ct) => Task.CompletedTask;

    internal override async Task<IDbContextTransaction> BeginReading(CancellationToken ct)
    {
        await Database.OpenConnectionAsync(ct);
        return (await Database.UseTransactionAsync(((SqliteConnection)Database.GetDbConnection()).BeginTransaction(deferred: true), ct))!;
    }

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        base.ConfigureConventions(configurationBuilder);
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UtcTicks>();
    }
}
