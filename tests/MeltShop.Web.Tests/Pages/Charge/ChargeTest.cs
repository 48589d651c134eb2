using AngleSharp.Dom;
using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>Opens the charge page and reads what it shows.</summary>
public abstract class ChargeTest : MeltingShop
{
    protected const string Chosen = "/charge?furnace=F1&grade=EN-GJS-500-7&kg=3000";

    protected NavigationManager Addresses => Services.GetRequiredService<NavigationManager>();

    protected IRenderedComponent<ChargePlanning> Open(string address = Chosen, string role = Role.Melter)
    {
        SignIn(role);
        Addresses.NavigateTo(address);
        var page = Render<ChargePlanning>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }

    protected IRenderedComponent<ChargePlanning> OpenPlanned(string role = Role.Melter)
    {
        var page = Open(role: role);
        WaitForPlan(page);
        return page;
    }

    protected static void WaitForPlan(IRenderedComponent<ChargePlanning> page) =>
        page.WaitForState(() => page.FindAll("[data-testid=plan-age][data-current=true]").Count > 0, Patience);

    protected static IElement Field(IRenderedComponent<ChargePlanning> page, string path) => page.Find($"[data-field=\"{path}\"]");

    protected static void Type(IRenderedComponent<ChargePlanning> page, string path, string text) =>
        page.Find($"[data-field=\"{path}\"] input").Change(text);

    protected static void Choose(IRenderedComponent<ChargePlanning> page, string path, string value) =>
        page.Find($"[data-field=\"{path}\"] select").Change(value);

    /// <summary>Presses a button as soon as it is there: a press before it may still be being drawn.</summary>
    protected static void Press(IRenderedComponent<ChargePlanning> page, string words)
    {
        page.WaitForState(() => page.FindAll("button").Any(button => button.TextContent.Trim() == words), Patience);
        page.Do(() => page.FindAll("button").Single(button => button.TextContent.Trim() == words).ClickAsync());
    }

    /// <summary>Opens what can be changed about a material or a limit.</summary>
    protected static void Change(IRenderedComponent<ChargePlanning> page, string of) => page.Find($"button[aria-label=\"Change {of}\"]").Click();

    protected static string CostPerTonne(IRenderedComponent<ChargePlanning> page) => page.Find("[data-testid=cost-per-tonne]").TextContent;

    protected static IEnumerable<string?> InPlan(IRenderedComponent<ChargePlanning> page) =>
        page.FindAll("[data-testid=in-plan] tr[data-material]").Select(row => row.GetAttribute("data-material"));
}
