using System.Globalization;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Shell;

/// <summary>The rail: tasks, and who is here.</summary>
public sealed partial class Navigation : IDisposable
{
    private const double UsualMinutes = 10;

    [Inject]
    private NavigationManager Address { get; set; } = null!;

    [Inject]
    private QuietAddress Quiet { get; set; } = null!;

    [Inject]
    private IConfiguration Settings { get; set; } = null!;

    /// <summary>How long a shared station keeps the name of somebody who does not touch it.</summary>
    private string StepDownMinutes => Settings.GetValue("MeltShop:StepDownMinutes", UsualMinutes).ToString(CultureInfo.InvariantCulture);

    private string StationAddress =>
        SignInPaths.Station + QueryString.Create(SignInPaths.ReturnTo, Quiet.Here);

    protected override void OnInitialized()
    {
        Address.LocationChanged += Moved;
        Quiet.Said += Said;
    }

    public void Dispose()
    {
        Address.LocationChanged -= Moved;
        Quiet.Said -= Said;
    }

    private void Said() => InvokeAsync(StateHasChanged);

    private void Moved(object? sender, Microsoft.AspNetCore.Components.Routing.LocationChangedEventArgs moved) => InvokeAsync(StateHasChanged);
}
