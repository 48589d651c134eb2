#pragma warning disable BL0006 // the renderer's own types: there is no other way to see what a circuit sends without a browser
using System.Collections.Concurrent;
using System.Diagnostics;
using MeltShop.Web.Pages.Ladles;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.RenderTree;

namespace MeltShop.Long;

/// <summary>One tablet at the page of a ladle: the page as a circuit draws it, without the way to a browser. Notes when each mould is on it.</summary>
internal sealed class TabletRenderer(IServiceProvider services, ILoggerFactory loggers) : Renderer(services, loggers)
{
    public override Dispatcher Dispatcher { get; } = Dispatcher.CreateDefault();

    /// <summary>When each mould was drawn first, by its label.</summary>
    public ConcurrentDictionary<string, long> Drawn { get; } = new();

    /// <summary>Batches that were sent.</summary>
    public int Batches { get; private set; }

    public Task Open(long treatedLadleId) => Dispatcher.InvokeAsync(() => RenderRootComponentAsync(
        AssignRootComponentId(InstantiateComponent(typeof(LadleDetail))), ParameterView.FromDictionary(new Dictionary<string, object?> { ["Id"] = treatedLadleId })));

    protected override Task UpdateDisplayAsync(in RenderBatch renderBatch)
    {
        Batches++;
        for (var i = 0; i < renderBatch.ReferenceFrames.Count; i++)
        {
            var frame = renderBatch.ReferenceFrames.Array[i];
            if (frame is { FrameType: RenderTreeFrameType.Attribute, AttributeName: "data-mould", AttributeValue: string label }) Drawn.TryAdd(label, Stopwatch.GetTimestamp());
        }

        return Task.CompletedTask;
    }

    protected override void HandleException(Exception exception) => System.Runtime.ExceptionServices.ExceptionDispatchInfo.Capture(exception).Throw();
}
