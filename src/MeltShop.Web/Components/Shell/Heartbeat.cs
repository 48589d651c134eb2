using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace MeltShop.Web.Components.Shell;

/// <summary>
/// Lets the browser ask whether this page's circuit answers, and what the time is here: entry/circuit.js asks, and believes no touch
/// while there is no answer.
/// </summary>
public sealed class Heartbeat : ComponentBase, IDisposable
{
    private DotNetObjectReference<Heartbeat>? self;

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    /// <summary>The time here, in milliseconds since 1970.</summary>
    [JSInvokable]
    public long Beat() => Clock.GetUtcNow().ToUnixTimeMilliseconds();

    public void Dispose() => self?.Dispose();

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender) return;
        self = DotNetObjectReference.Create(this);
        var script = await Browser.InvokeAsync<IJSObjectReference>("import", "./entry/circuit.js");
        await script.InvokeVoidAsync("listen", self);
    }
}
