namespace MeltShop.Web.Pages.Charge;

/// <summary>
/// An answer that a person asks for by a press, reckoned away from the page's own thread. It belongs to the question that it was asked
/// for: withdrawn as soon as that changes.
/// </summary>
public sealed class Request<TAnswer>(ILogger log) : IDisposable
    where TAnswer : class
{
    private CancellationTokenSource? running;

    /// <summary>Null until it is there.</summary>
    public TAnswer? Answer { get; private set; }

    public bool HasFailed { get; private set; }

    public bool IsWorking => running is not null;

    /// <summary>Reckons it. Returns when it is there, has failed, or was withdrawn.</summary>
    public async Task Ask(Func<CancellationToken, TAnswer> reckon)
    {
        Withdraw();
        using var mine = new CancellationTokenSource();
        running = mine;
        try
        {
            var answer = await Task.Run(() => reckon(mine.Token), mine.Token);
            if (running == mine) Answer = answer;
        }
        catch (OperationCanceledException) when (mine.IsCancellationRequested)
        {
        }
#pragma warning disable CA1031 // whatever kept it from being reckoned: the page says so
        catch (Exception fault)
#pragma warning restore CA1031
        {
            log.LogError(fault, "An answer beside a plan could not be reckoned");
            if (running == mine) HasFailed = true;
        }
        finally
        {
            if (running == mine) running = null;
        }
    }

    /// <summary>Takes the answer away, and gives up what is still being reckoned.</summary>
    public void Withdraw()
    {
        running?.Cancel();
        (running, Answer, HasFailed) = (null, null, false);
    }

    public void Dispose() => Withdraw();
}
