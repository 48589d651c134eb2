using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Trail;

/// <summary>The check of the whole trail, on demand.</summary>
public sealed partial class TrailChecking : IDisposable
{
    private const int Shown = 50;

    private readonly CancellationTokenSource leaving = new();
    private readonly TextEntry against = new EntryForm().Words("against");
    private TrailReport? report;
    private TrailMark? mark;
    private bool isChecking;
    private bool isUnknownMark;

    [Inject]
    private TrailCheck Trail { get; set; } = null!;

    public void Dispose()
    {
        leaving.Cancel();
        leaving.Dispose();
    }

    private async Task Check()
    {
        if (isChecking) return;
        (report, mark) = (null, TrailMark.Read(against.Value));
        isUnknownMark = mark is null && !string.IsNullOrWhiteSpace(against.Value);
        if (isUnknownMark) return;
        isChecking = true;
        StateHasChanged();
        try
        {
            var marks = mark is null ? Array.Empty<TrailMark>() : [mark];
            report = await Task.Run(() => Trail.Run(marks, leaving.Token), leaving.Token);
        }
        catch (OperationCanceledException) when (leaving.IsCancellationRequested)
        {
            // the person has left
        }
        finally
        {
            isChecking = false;
        }
    }
}
