namespace MeltShop.Web.Components.Fields;

/// <summary>
/// A press that is about what was drawn when it was made. On a slow line the browser still shows the former drawing after the page has made the next
/// one, and a press on it is answered by the handler of that drawing: this one says what stood there.
/// </summary>
/// <typeparam name="TSeen">What the press is about; the handler stays the same while it does.</typeparam>
/// <param name="press">What is done, with what was seen.</param>
public sealed class Drawn<TSeen>(Func<TSeen, Task> press)
{
    private TSeen? seen;
    private Func<Task>? handler;

    /// <summary>The code of the refusal where something else stands there now.</summary>
    public const string Code = "seen.changed";

    /// <summary>The handler of a drawing that shows this.</summary>
    public Func<Task> On(TSeen now)
    {
        if (handler is null || !EqualityComparer<TSeen>.Default.Equals(now, seen)) (seen, handler) = (now, () => press(now));
        return handler;
    }
}
