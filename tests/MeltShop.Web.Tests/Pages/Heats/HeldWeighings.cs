using System.Collections;
using MeltShop.Records.Reading.Heats;

namespace MeltShop.Web.Tests.Pages.Heats;

/// <summary>Weighings of a heat: whoever reads them away from the page's own thread waits.</summary>
internal sealed class HeldWeighings(IReadOnlyList<WeighingView> weighings) : IReadOnlyList<WeighingView>, IDisposable
{
    private readonly TaskCompletionSource asked = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly ManualResetEventSlim gate = new();

    public Task Asked => asked.Task;

    public int Count => weighings.Count;

    public WeighingView this[int index] => weighings[index];

    public void LetGo() => gate.Set();

    public IEnumerator<WeighingView> GetEnumerator()
    {
        if (SynchronizationContext.Current is not null) return weighings.GetEnumerator();
        asked.TrySetResult();
        gate.Wait();
        return weighings.GetEnumerator();
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    public void Dispose() => gate.Dispose();
}
