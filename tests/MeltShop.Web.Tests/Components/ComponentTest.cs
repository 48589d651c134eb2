using System.Globalization;
using Bunit;
using MeltShop.Web.Components.Units;
using MeltShop.Web.Texts;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;

namespace MeltShop.Web.Tests.Components;

/// <summary>Draws components without a browser, in British English unless a test says otherwise.</summary>
public abstract class ComponentTest : BunitContext
{
    private readonly CultureInfo culture = CultureInfo.CurrentCulture;
    private readonly CultureInfo language = CultureInfo.CurrentUICulture;

    protected static readonly TimeSpan Patience = Patient.Patience;

    static ComponentTest() => DefaultWaitTimeout = Patience;

    protected ComponentTest()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddLogging();
        Services.AddSingleton<IConfiguration>(new ConfigurationBuilder().Build());
        Services.AddMeltShopTexts();
        Services.AddMudServices();
        Speak("en-GB");
    }

    /// <summary>Draws in this language, with its decimal sign, from now on.</summary>
    protected static void Speak(string name)
    {
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
        CultureInfo.CurrentUICulture = CultureInfo.CurrentCulture;
    }

    /// <summary>Draws and reads in these units from now on.</summary>
    protected static void Measure(ShopUnits units) => ShopUnits.Speak(() => units);

    /// <summary>The press that opened a form is gone: the keyboard goes on in the form, at one place (entry/first.js).</summary>
    protected static void HasKeyboard<TComponent>(IRenderedComponent<TComponent> page)
        where TComponent : Microsoft.AspNetCore.Components.IComponent =>
        page.WaitForAssertion(() => Assert.Single(page.FindAll("[data-first]")));

    protected override void Dispose(bool disposing)
    {
        CultureInfo.CurrentCulture = culture;
        CultureInfo.CurrentUICulture = language;
        Measure(ShopUnits.Recorded);
        base.Dispose(disposing);
    }
}
