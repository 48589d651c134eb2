using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace MeltShop.Long;

/// <summary>A browser that is not there.</summary>
internal sealed class NoBrowser : IJSRuntime
{
    public ValueTask<TValue> InvokeAsync<TValue>(string identifier, object?[]? args) => ValueTask.FromResult<TValue>(default!);

    public ValueTask<TValue> InvokeAsync<TValue>(string identifier, CancellationToken cancellationToken, object?[]? args) => ValueTask.FromResult<TValue>(default!);
}

/// <summary>Its address.</summary>
internal sealed class Nowhere : NavigationManager
{
    public Nowhere() => Initialize("http://localhost/", "http://localhost/");
}
