using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace MeltShop.Web.Components.Reading;

/// <summary>What was chosen on a page goes into its address without a navigation, which would read the page and ask everything once more.</summary>
public sealed class QuietAddress(IJSRuntime browser, NavigationManager addresses)
{
    private readonly Dictionary<string, object?> said = [];
    private string? saidAt;
    private IJSObjectReference? script;

    /// <summary>Something was said.</summary>
    public event Action? Said;

    /// <summary>Path and query of the page that is shown, with what was said of it.</summary>
    public string Here => new Uri(addresses.Uri == saidAt ? addresses.GetUriWithQueryParameters(said) : addresses.Uri).PathAndQuery;

    /// <summary>From now on these are the values of this name in the address of the page that is shown; what is said next takes their place.</summary>
    public async Task Say(string name, IReadOnlyList<string> values)
    {
        if (addresses.Uri != saidAt) said.Clear();
        (saidAt, said[name]) = (addresses.Uri, values.ToArray());
        Said?.Invoke();
        var path = new Uri(addresses.Uri).AbsolutePath;
        try
        {
            script ??= await browser.InvokeAsync<IJSObjectReference>("import", "./entry/opened.js");
            await script.InvokeVoidAsync("say", name, values, path);
        }
        catch (Exception lost) when (lost is JSException or JSDisconnectedException or OperationCanceledException)
        {
            // The browser is gone, or could not fetch the script; what is said next says all of it.
        }
    }
}
