using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using Microsoft.AspNetCore.Components.Web;

namespace MeltShop.Web.Components;

/// <summary>The document around every page.</summary>
public sealed partial class App
{
    /// <summary>
    /// Pages are drawn only once their circuit answers: a field that looks alive before that loses what is typed into it.
    /// Pages that post (sign-in) opt out and are plain documents.
    /// </summary>
    private static readonly InteractiveServerRenderMode Live = new(prerender: false);

    [CascadingParameter]
    private HttpContext? Request { get; set; }

    [Inject]
    private IConfiguration Settings { get; set; } = null!;

    /// <summary>How long a page hears no answer of its circuit before it says so and believes no touch, s; entry/circuit.js says what the usual one stands.</summary>
    private string SilentAfterSeconds => Settings.GetValue("MeltShop:SilentAfterSeconds", 1.5).ToString(CultureInfo.InvariantCulture);

    /// <summary>The look that was chosen on the device; null where its own setting counts.</summary>
    private string? Chosen => Looks.Look.Of(Request);

    private IComponentRenderMode? Mode => Request?.AcceptsInteractiveRouting() == true ? Live : null;
}
