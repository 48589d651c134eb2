using System.Diagnostics;
using System.Runtime.CompilerServices;
using AngleSharp.Dom;
using Bunit;
using Bunit.Extensions.WaitForHelpers;
using Bunit.Rendering;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Tests;

/// <summary>
/// Steps of a test that wait for what they need: a page reads its database while it is drawn, and on a busy machine a press is
/// answered later than the next line of the test runs. They stand nearer to the tests than the library's own of the same names,
/// which do not wait, and are therefore taken without a word in each test.
/// </summary>
internal static class Patient
{
    /// <summary>A busy machine draws later, and is not at fault.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    /// <summary>How long the library, which looks only when something is drawn, is left alone: a file, a process or an address changes without a drawing.</summary>
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(500);

    /// <summary>How an element was found, to find it again in a page that was drawn anew meanwhile.</summary>
    private static readonly ConditionalWeakTable<IElement, Func<IElement>> Looks = [];

    [ThreadStatic]
    private static bool isWaiting;

    /// <summary>The element, as soon as it is drawn; fails as the library's own when it never is.</summary>
    public static IElement Find<TComponent>(this IRenderedComponent<TComponent> page, string selector)
        where TComponent : IComponent
    {
        var found = !MayWait || page.FindAll(selector).Count > 0 ? RenderedComponentExtensions.Find(page, selector) : page.WaitForElement(selector, Patience);
        Looks.AddOrUpdate(found, () => RenderedComponentExtensions.Find(page, selector));
        return found;
    }

    /// <summary>Presses, and goes on when all that the press began has ended.</summary>
    public static void Click(this IElement button) => End(button, one => one.ClickAsync());

    /// <summary>Hands a form in, and goes on when it was answered.</summary>
    public static void Submit(this IElement form) => End(form, one => one.SubmitAsync());

    /// <summary>Changes what a field holds, and goes on when the page has taken it in.</summary>
    public static void Change<TValue>(this IElement field, TValue value) => End(field, one => one.ChangeAsync(value));

    /// <summary>
    /// Looks for something and presses or changes it in one go, on the page's own thread, and goes on when all that began has ended: between the two nothing
    /// is drawn anew. What <see cref="Find"/> answers can be found again in a new drawing; one of many, or what lies in it, cannot.
    /// </summary>
    public static void Do<TComponent>(this IRenderedComponent<TComponent> page, Func<Task> act)
        where TComponent : IComponent => Wait(page.InvokeAsync(act));

    /// <inheritdoc cref="RenderedComponentWaitForHelperExtensions.WaitForState"/>
    public static void WaitForState<TComponent>(this IRenderedComponent<TComponent> page, Func<bool> holds, TimeSpan? patience = null)
        where TComponent : IComponent =>
        Again(look => RenderedComponentWaitForHelperExtensions.WaitForState(page, () => AtOnce(holds), look), patience);

    /// <inheritdoc cref="RenderedComponentWaitForHelperExtensions.WaitForAssertion"/>
    public static void WaitForAssertion<TComponent>(this IRenderedComponent<TComponent> page, Action assert, TimeSpan? patience = null)
        where TComponent : IComponent =>
        Again(look => RenderedComponentWaitForHelperExtensions.WaitForAssertion(page, () => AtOnce(() => { assert(); return true; }), look), patience);

    /// <summary>The drawing itself must not wait for a drawing: neither in what is looked at after each one, nor on the page's own thread of work.</summary>
    private static bool MayWait => !isWaiting && SynchronizationContext.Current?.GetType().Name != "RendererSynchronizationContext";

    private static void Again(Action<TimeSpan> wait, TimeSpan? patience)
    {
        for (var began = Stopwatch.GetTimestamp(); ;)
        {
            try
            {
                wait(Look);
                return;
            }
            catch (WaitForFailedException) when (Stopwatch.GetElapsedTime(began) < (patience ?? Patience))
            {
                // looked at again
            }
        }
    }

    private static T AtOnce<T>(Func<T> look)
    {
        isWaiting = true;
        try
        {
            return look();
        }
        finally
        {
            isWaiting = false;
        }
    }

    // A press that a test holds open on purpose is gone on from after the patience; so is one whose page is left behind.
    private static void Wait(Task press)
    {
        if (MayWait && !press.IsCompleted)
            Task.WaitAny([press], Patience);
        if (press.IsFaulted)
            press.GetAwaiter().GetResult();
    }

    // A press that met a page which was drawn anew in that moment did nothing, and is made again: a browser knows both drawings until the new one is shown.
    private static void End(IElement element, Func<IElement, Task> press)
    {
        Looks.TryGetValue(element, out var look);
        while (true)
        {
            try
            {
                Wait(press(element));
                return;
            }
            catch (UnknownEventHandlerIdException) when (look is not null)
            {
                element = look();
            }
        }
    }
}
