using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace MeltShop.Records.Tests.Databases;

/// <summary>Counts the statements that the current flow of a test sends, whatever other tests do meanwhile.</summary>
public sealed class Commands : IObserver<DiagnosticListener>, IObserver<KeyValuePair<string, object?>>
{
    private static readonly AsyncLocal<Counter?> Current = new();

    static Commands() => DiagnosticListener.AllListeners.Subscribe(new Commands());

    private Commands()
    {
    }

    public static async Task<int> Sent(Func<Task> action)
    {
        var counter = new Counter();
        Current.Value = counter;
        await action();
        Current.Value = null;
        return counter.Count;
    }

    public void OnNext(DiagnosticListener value)
    {
        if (value.Name == DbLoggerCategory.Name) value.Subscribe(this);
    }

    public void OnNext(KeyValuePair<string, object?> value)
    {
        if (value.Key == RelationalEventId.CommandExecuting.Name && Current.Value is { } counter) counter.Increment();
    }

    public void OnCompleted()
    {
    }

    public void OnError(Exception error)
    {
    }

    private sealed class Counter
    {
        private int count;

        public int Count => count;

        public void Increment() => Interlocked.Increment(ref count);
    }
}
