using MeltShop.Records.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Databases;

/// <summary>An empty database of one test class, migrated as the program migrates it. Thrown away afterwards.</summary>
public abstract class Database : IAsyncLifetime
{
    private ChangeNotices? notices;
    private ContextFactory? contexts;

    public RecordsOptions Options { get; private set; } = null!;
    public IDbContextFactory<RecordsContext> Contexts => contexts ??= new ContextFactory(Options);
    public SteppingClock Clock { get; } = new();
    public ChangeNotices Notices => notices ??= new ChangeNotices(TimeProvider.System);
    public Recorder Recorder => new(Contexts, Notices, Clock);

    public RecordsContext Open() => Contexts.CreateDbContext();

    public async ValueTask InitializeAsync() => Options = await Create();

    public async ValueTask DisposeAsync()
    {
        if (Options is not null) await Drop();
        GC.SuppressFinalize(this);
    }

    /// <summary>Ends this one for good and answers with a way to make copies of what it holds now.</summary>
    public abstract Task<Func<Database>> Seal();

    /// <summary>Uses a database that is there already.</summary>
    protected void Stand(RecordsOptions options) => Options = options;

    protected abstract Task<RecordsOptions> Create();

    protected abstract Task Drop();
}
