using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Looks;

/// <summary>Chooses the look of this device, also before anybody has signed in: who cannot read the page cannot sign in.</summary>
public sealed partial class LookPage
{
    [CascadingParameter]
    private HttpContext? Request { get; set; }

    private string Chosen => Look.Of(Request) ?? Look.Device;

    /// <summary>Where the person came from: choosing a look is no way to lose one's place.</summary>
    private string Back => Uri.TryCreate(Request?.Request.Headers.Referer, UriKind.Absolute, out var from)
        && from.Host == Request?.Request.Host.Host && from.AbsolutePath != Look.Page ? SignInPaths.Local(from.PathAndQuery) : "/";
}
