namespace MeltShop.Web.SignIn;

/// <summary>How often a wrong PIN may be tried: a few digits are quickly guessed. Counted by the name that is claimed, wherever it is tried.</summary>
internal sealed class PinAttempts(TimeProvider time)
{
    public const int Most = 5;
    private static readonly TimeSpan Within = TimeSpan.FromMinutes(5);

    private readonly Lock gate = new();
    private readonly Dictionary<string, (long Since, int Count)> tried = [];

    /// <summary>Counts an attempt, before anybody looks whether it is right: many at once are counted too. False where there were too many.</summary>
    /// <param name="name">As people are looked up.</param>
    public bool May(string name)
    {
        lock (gate)
        {
            foreach (var (old, _) in tried.Where(one => time.GetElapsedTime(one.Value.Since) >= Within).ToList()) tried.Remove(old);
            var (since, count) = tried.GetValueOrDefault(name, (time.GetTimestamp(), 0));
            if (count >= Most) return false;
            tried[name] = (since, count + 1);
            return true;
        }
    }

    /// <summary>A right PIN was no guess; those before it stay counted.</summary>
    public void GiveBack(string name)
    {
        lock (gate)
        {
            if (tried.TryGetValue(name, out var all)) tried[name] = all with { Count = all.Count - 1 };
        }
    }
}
