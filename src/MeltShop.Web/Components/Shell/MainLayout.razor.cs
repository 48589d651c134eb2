using Microsoft.AspNetCore.Components.Web;

namespace MeltShop.Web.Components.Shell;

public sealed partial class MainLayout
{
    private ErrorBoundary? boundary;

    /// <summary>A failed page does not keep the next one from being shown.</summary>
    protected override void OnParametersSet() => boundary?.Recover();
}
