using System.Diagnostics;
using AngleSharp.Dom;
using Bunit;
using Bunit.Extensions.WaitForHelpers;
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
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>How long the library, which looks only when something is drawn, is left alone: a file, a process or an address changes without a drawing.</summary>
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(500);

    [ThreadStatic]
    private static bool isWaiting;

    /// <summary>The element, as soon as it is drawn; fails as the library's own when it never is.</summary>
    public static IElement Find<TComponent>(this IRenderedComponent<TComponent> page, string selector)
        where TComponent : IComponent
    {
        if (!MayWait || page.FindAll(selector).Count > 0)
            return RenderedComponentExtensions.Find(page, selector);
        return page.WaitForElement(selector, Patience);
    }

    /// <summary>Presses, and goes on when all that the press began has ended.</summary>
    public static void Click(this IElement button) => End(button.ClickAsync());

    /// <summary>Hands a form in, and goes on when it was answered.</summary>
    public static void Submit(this IElement form) => End(form.SubmitAsync());

    /// <summary>Changes what a field holds, and goes on when the page has taken it in.</summary>
    public static void Change<TValue>(this IElement field, TValue value) => End(field.ChangeAsync(value));

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
    private static void End(Task press)
    {
        if (MayWait && !press.IsCompleted)
            Task.WaitAny([press], Patience);
        if (press.IsFaulted)
            press.GetAwaiter().GetResult();
    }
}
