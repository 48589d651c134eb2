using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;
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

    [Inject]
    private AuthenticationStateProvider People { get; set; } = null!;

    [Inject]
    private SignInTerms Terms { get; set; } = null!;

    /// <summary>
    /// The time here, in milliseconds since 1970; null once the person's sign-in has ended: the browser then keeps what was typed and loads the
    /// page anew, before <see cref="RevalidatingPerson"/> takes it away.
    /// </summary>
    [JSInvokable]
    public async Task<long?> Beat()
    {
        var user = (await People.GetAuthenticationStateAsync()).User;
        return user.Identity?.IsAuthenticated == true && Terms.IsOver(user) ? null : Clock.GetUtcNow().ToUnixTimeMilliseconds();
    }

    public void Dispose() => self?.Dispose();

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender) return;
        self = DotNetObjectReference.Create(this);
        var script = await Browser.InvokeAsync<IJSObjectReference>("import", "./entry/circuit.js");
        await script.InvokeVoidAsync("listen", self);
    }
}
