#pragma warning disable BL0006 // the renderer's own types: there is no other way to count what a circuit holds without a browser
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.RenderTree;

namespace MeltShop.Long;

/// <summary>What a circuit keeps and does for a component, without the way to a browser.</summary>
internal sealed class GridRenderer(IServiceProvider services, ILoggerFactory loggers) : Renderer(services, loggers)
{
    private readonly List<ulong> changes = [];

    public override Dispatcher Dispatcher { get; } = Dispatcher.CreateDefault();

    /// <summary>The handlers of "change" that are drawn now, one a cell.</summary>
    public IReadOnlyList<ulong> Changes => changes;

    /// <summary>Draws a component.</summary>
    public Task Draw<TComponent>()
        where TComponent : IComponent => Dispatcher.InvokeAsync(() => RenderRootComponentAsync(AssignRootComponentId(InstantiateComponent(typeof(TComponent)))));

    /// <summary>Commits a text in a cell, and draws what follows from it.</summary>
    public Task Commit(ulong handler, string text) => Dispatcher.InvokeAsync(() => DispatchEventAsync(handler, null, new ChangeEventArgs { Value = text }));

    protected override Task UpdateDisplayAsync(in RenderBatch renderBatch)
    {
        for (var i = 0; i < renderBatch.ReferenceFrames.Count; i++)
        {
            var frame = renderBatch.ReferenceFrames.Array[i];
            if (frame is { FrameType: RenderTreeFrameType.Attribute, AttributeName: "onchange", AttributeEventHandlerId: > 0 } && !changes.Contains(frame.AttributeEventHandlerId))
                changes.Add(frame.AttributeEventHandlerId);
        }

        // Last: what a batch drew twice it drew once in vain.
        for (var i = 0; i < renderBatch.DisposedEventHandlerIDs.Count; i++) changes.Remove(renderBatch.DisposedEventHandlerIDs.Array[i]);

        return Task.CompletedTask;
    }

    protected override void HandleException(Exception exception) => System.Runtime.ExceptionServices.ExceptionDispatchInfo.Capture(exception).Throw();
}
