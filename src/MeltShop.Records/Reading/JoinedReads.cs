namespace MeltShop.Records.Reading;

/// <summary>
/// One reading for all who ask for the same thing at the same time, as fifty tablets at one ladle do after each change. Who asks while one
/// runs shares the next: a reading never began before it was asked for, so nobody is answered with what was before a change.
/// </summary>
internal sealed class JoinedReads<TKey, TView>(Func<TKey, Task<TView>> read)
    where TKey : notnull
{
    private readonly Lock gate = new();
    private readonly Dictionary<TKey, Turn> turns = [];

    /// <param name="ct">Ends the waiting, not the reading: others share it.</param>
    public Task<TView> Of(TKey key, CancellationToken ct)
    {
        lock (gate)
        {
            if (!turns.TryGetValue(key, out var turn))
            {
                turns[key] = turn = new();
                turn.Running = Run(key, turn);
                return turn.Running.WaitAsync(ct);
            }

            return (turn.Next ??= Follow(key, turn, turn.Running)).WaitAsync(ct);
        }
    }

    private async Task<TView> Run(TKey key, Turn turn)
    {
        await Task.Yield(); // off the gate
        return await Read(key, turn);
    }

    private async Task<TView> Follow(TKey key, Turn turn, Task<TView> running)
    {
        await Task.WhenAny(running);
        await Task.Yield();
        lock (gate) (turn.Running, turn.Next) = (turn.Next!, null); // whoever asks from now on waits for another one
        return await Read(key, turn);
    }

    private async Task<TView> Read(TKey key, Turn turn)
    {
        try
        {
            return await read(key);
        }
        finally
        {
            lock (gate)
            {
                if (turn.Next is null) turns.Remove(key);
            }
        }
    }

    private sealed class Turn
    {
        public Task<TView> Running { get; set; } = null!;
        public Task<TView>? Next { get; set; }
    }
}
