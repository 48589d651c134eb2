using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Databases;

/// <summary>The records in a SQLite file.</summary>
public sealed class SqliteRecords(DbContextOptions<SqliteRecords> options) : RecordsContext(options)
{
    // A write transaction is immediate: the whole file is locked already.
    internal override Task<TrailHead> LockHead(CancellationToken ct) => TrailHeads.SingleAsync(ct);

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        base.ConfigureConventions(configurationBuilder);
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UtcTicks>();
    }
}
