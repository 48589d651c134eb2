using MeltShop.Operations;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.States;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Reading;

/// <summary>
/// A page that shows one view of the records: reads it when it opens and when its address changes, and again whenever
/// something that it shows was changed by anybody; says how old it is.
/// </summary>
/// <typeparam name="TView">What the page's query answers.</typeparam>
public abstract class PageBase<TView> : ComponentBase, IDisposable
    where TView : class
{
    private readonly CancellationTokenSource leaving = new();
    private int reading;
    private bool isAnother;

    [Inject]
    protected TimeProvider Clock { get; set; } = null!;

    [Inject]
    protected ShopSite Site { get; set; } = null!;

    [Inject]
    private ChangeNotices Notices { get; set; } = null!;

    [Inject]
    private ActingPerson Person { get; set; } = null!;

    [Inject]
    private ILoggerFactory Loggers { get; set; } = null!;

    /// <summary>What was read last; null until then. It stays on the page while it is read again.</summary>
    protected TView? View { get; private set; }

    protected ViewState State { get; private set; } = ViewState.Loading;

    /// <summary><see cref="View"/> could not be read again: it stays, with what is typed and runs beside it, and is said to be old.</summary>
    protected bool IsOld { get; private set; }

    /// <summary>When <see cref="View"/> was read, day and time of the site.</summary>
    protected string? AsOf { get; private set; }

    /// <summary>Who acts on this page.</summary>
    protected Acting Acting { get; private set; } = null!;

    protected PageBase() => Leaving = leaving.Token;

    /// <summary>Cancelled when the person leaves the page; can still be asked after that.</summary>
    protected CancellationToken Leaving { get; }

    /// <summary>Whether the person holds one of an operation's roles; the operation itself checks again.</summary>
    protected bool May(IReadOnlyList<string> roles) => Acting?.HoldsAny(roles) == true;

    /// <summary>Reads the view; null where there is no such record.</summary>
    protected abstract Task<TView?> Read(CancellationToken ct);

    /// <summary>Whether a change may alter what the page shows.</summary>
    protected abstract bool Concerns(ChangeNotice change);

    /// <summary>Whether there is nothing to show yet.</summary>
    protected virtual bool IsEmpty(TView view) => false;

    /// <summary>After a view was read, before it is drawn.</summary>
    protected virtual void Arrived(TView view)
    {
    }

    protected sealed override async Task OnInitializedAsync()
    {
        Acting = await Person.GetAsync();
        _ = Follow(Notices.Listen(Leaving));
    }

    protected sealed override Task OnParametersSetAsync()
    {
        isAnother = true;
        return Reload();
    }

    /// <summary>Reads the view anew. Where two readings overtake each other the later question wins.</summary>
    protected Task Reload() => Reload(false);

    private async Task Reload(bool withTheSite)
    {
        var mine = ++reading;
        try
        {
            await (withTheSite ? Site.LoadAgain(Leaving) : Site.Load(Leaving));
            var view = await Read(Leaving);
            if (mine != reading || Leaving.IsCancellationRequested) return;
            (View, AsOf) = (view, Site.DayAndClock(Clock.GetUtcNow()));
            isAnother = IsOld = false;
            State = view is null ? ViewState.Missing : IsEmpty(view) ? ViewState.Empty : ViewState.Ready;
            if (view is not null) Arrived(view);
        }
        catch (OperationCanceledException) when (Leaving.IsCancellationRequested)
        {
        }
#pragma warning disable CA1031 // whatever kept it from being read: the page says so and offers to try again
        catch (Exception fault)
#pragma warning restore CA1031
        {
            Loggers.CreateLogger(GetType()).LogError(fault, "The page could not be read");
            if (mine != reading) return;
            IsOld = View is not null && !isAnother; // of another address it would be the wrong record
            if (!IsOld) State = ViewState.Failed;
        }
    }

    private async Task Follow(IAsyncEnumerable<IReadOnlyList<ChangeNotice>> bundles)
    {
        await foreach (var changes in bundles)
        {
            // Another instance may have changed the site: its units are in every number here.
            var isOfTheSite = changes.Any(change => change == ChangeNotice.Anything || change.Kind == ChangeKind.Site);
            if (!isOfTheSite && !changes.Any(Concerns)) continue;
            await InvokeAsync(async () =>
            {
                await Reload(isOfTheSite);
                StateHasChanged();
            });
        }
    }

    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    protected virtual void Dispose(bool disposing)
    {
        if (!disposing) return;
        leaving.Cancel();
        leaving.Dispose();
    }
}
