using MeltShop.Records.Castings;
using MeltShop.Records.Databases;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Importing;
using MeltShop.Records.Keeping;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Mapping;
using MeltShop.Records.Orders;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace MeltShop.Records;

/// <summary>
/// Everything that a shop records, on either database. Anything but drafts, people and keys is written through
/// <see cref="Writing.Recorder"/>, which adds the entry and the trail.
/// </summary>
public abstract class RecordsContext(DbContextOptions options)
    : IdentityDbContext<Person, IdentityRole<long>, long>(options), IDataProtectionKeyContext
{
    public DbSet<Site> Sites => Set<Site>();
    public DbSet<HeatCounter> HeatCounters => Set<HeatCounter>();
    public DbSet<Furnace> Furnaces => Set<Furnace>();
    public DbSet<Ladle> Ladles => Set<Ladle>();
    public DbSet<ChargeRule> ChargeRules => Set<ChargeRule>();
    public DbSet<LadleFigure> LadleFigures => Set<LadleFigure>();

    public DbSet<Material> Materials => Set<Material>();
    public DbSet<MaterialAnalysis> MaterialAnalyses => Set<MaterialAnalysis>();
    public DbSet<PriceFact> Prices => Set<PriceFact>();
    public DbSet<StockFact> StockFacts => Set<StockFact>();
    public DbSet<LotPlace> LotPlaces => Set<LotPlace>();

    public DbSet<Grade> Grades => Set<Grade>();
    public DbSet<GradeWindow> GradeWindows => Set<GradeWindow>();

    public DbSet<CastingOrder> CastingOrders => Set<CastingOrder>();

    public DbSet<Plan> Plans => Set<Plan>();
    public DbSet<Heat> Heats => Set<Heat>();
    public DbSet<HeatCorrection> HeatCorrections => Set<HeatCorrection>();
    public DbSet<HeatStep> HeatSteps => Set<HeatStep>();
    public DbSet<Heel> Heels => Set<Heel>();
    public DbSet<Weighing> Weighings => Set<Weighing>();
    public DbSet<TemperatureReading> Temperatures => Set<TemperatureReading>();
    public DbSet<BathCorrection> BathCorrections => Set<BathCorrection>();
    public DbSet<FurnaceMetal> FurnaceMetals => Set<FurnaceMetal>();

    public DbSet<Sample> Samples => Set<Sample>();
    public DbSet<Burn> Burns => Set<Burn>();
    public DbSet<Laboratory.Reading> Readings => Set<Laboratory.Reading>();
    public DbSet<SampleMean> SampleMeans => Set<SampleMean>();
    public DbSet<CoinOnItsWay> CoinsOnTheirWay => Set<CoinOnItsWay>();
    public DbSet<Instrument> Instruments => Set<Instrument>();
    public DbSet<ReferenceMaterial> ReferenceMaterials => Set<ReferenceMaterial>();
    public DbSet<ControlSample> ControlSamples => Set<ControlSample>();

    public DbSet<TreatedLadle> TreatedLadles => Set<TreatedLadle>();
    public DbSet<LadleStep> LadleSteps => Set<LadleStep>();
    public DbSet<PocketCard> PocketCards => Set<PocketCard>();
    public DbSet<Tap> Taps => Set<Tap>();
    public DbSet<PouredMould> PouredMoulds => Set<PouredMould>();
    public DbSet<LadleRest> LadleRests => Set<LadleRest>();
    public DbSet<LadleInoculation> LadleInoculations => Set<LadleInoculation>();
    public DbSet<MagnesiumDose> MagnesiumDoses => Set<MagnesiumDose>();
    public DbSet<CastingDecision> CastingDecisions => Set<CastingDecision>();

    public DbSet<TestPiece> TestPieces => Set<TestPiece>();
    public DbSet<TestResult> TestResults => Set<TestResult>();
    public DbSet<Certificate> Certificates => Set<Certificate>();

    public DbSet<BurnDecision> BurnDecisions => Set<BurnDecision>();

    public DbSet<ImportMap> ImportMaps => Set<ImportMap>();
    public DbSet<ImportedFile> ImportedFiles => Set<ImportedFile>();
    public DbSet<ImportedSample> ImportedSamples => Set<ImportedSample>();
    public DbSet<ImportedCheck> ImportedChecks => Set<ImportedCheck>();

    public DbSet<Draft> Drafts => Set<Draft>();
    public DbSet<ApiKey> ApiKeys => Set<ApiKey>();
    public DbSet<Entry> Entries => Set<Entry>();
    public DbSet<TrailRow> TrailRows => Set<TrailRow>();
    public DbSet<TrailHead> TrailHeads => Set<TrailHead>();
    public DbSet<DataProtectionKey> DataProtectionKeys => Set<DataProtectionKey>();

    /// <summary>The rows that were written past the change tracker, for the trail.</summary>
    internal BulkImages Bulk { get; } = new();

    /// <summary>
    /// Says which version of a row its editor saw: the save fails with a concurrency exception where somebody else was faster.
    /// The row gets a new version even where only its children change.
    /// </summary>
    public void Expect<TRow>(TRow row, Guid seen)
        where TRow : class, IVersioned
    {
        var version = Entry(row).Property(r => r.Version);
        version.OriginalValue = seen;
        version.IsModified = true;
    }

    /// <summary>
    /// Keeps the ledger of a furnace to this transaction until it ends, so that what is read from it still holds when it is written:
    /// two taps at once would else both find enough metal.
    /// </summary>
    public abstract Task LockFurnace(long furnaceId, CancellationToken ct);

    /// <summary>Keeps the ledger of a material in the yard to this transaction until it ends.</summary>
    public abstract Task LockMaterial(long materialId, CancellationToken ct);

    /// <summary>Keeps a ladle to this transaction until it ends: two heats at two furnaces would else both find it empty.</summary>
    public abstract Task LockLadle(long ladleId, CancellationToken ct);

    /// <summary>The head of the trail, locked until the transaction ends.</summary>
    internal abstract Task<TrailHead> LockHead(CancellationToken ct);

    /// <summary>Has long texts of this transaction packed by the quickest way that the database knows.</summary>
    internal virtual Task PackQuickly(CancellationToken ct) => Task.CompletedTask;

    /// <summary>Sends the changes to other instances of the program when the transaction commits; an embedded database has none.</summary>
    internal virtual Task Announce(Guid from, IReadOnlyList<ChangeNotice> changes, CancellationToken ct) => Task.CompletedTask;

    /// <summary>A transaction that reads one state of all tables and keeps no writer waiting.</summary>
    internal abstract Task<IDbContextTransaction> BeginReading(CancellationToken ct);

    /// <inheritdoc/>
    public override int SaveChanges(bool acceptAllChangesOnSuccess)
    {
        SaveGuard.Apply(ChangeTracker);
        return base.SaveChanges(acceptAllChangesOnSuccess);
    }

    /// <inheritdoc/>
    public override Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default)
    {
        SaveGuard.Apply(ChangeTracker);
        return base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);
    }

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        ArgumentNullException.ThrowIfNull(configurationBuilder);
        base.ConfigureConventions(configurationBuilder);
        Conventions.Apply(configurationBuilder);
    }

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        base.OnModelCreating(builder);
        PeopleMapping.Apply(builder);
        SiteMapping.Apply(builder);
        YardMapping.Apply(builder);
        GradeMapping.Apply(builder);
        OrderMapping.Apply(builder);
        HeatMapping.Apply(builder);
        LaboratoryMapping.Apply(builder);
        InstrumentMapping.Apply(builder);
        LadleMapping.Apply(builder);
        CastingMapping.Apply(builder);
        ImportMapping.Apply(builder);
        KeepingMapping.Apply(builder);
        FactMapping.Apply(builder);
        VersionMapping.Apply(builder);
    }
}
