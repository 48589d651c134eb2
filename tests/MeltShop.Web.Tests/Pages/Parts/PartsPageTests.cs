using Bunit;
using MeltShop.Web.Components.Limits;
using MeltShop.Web.Components.Ribbon;
using MeltShop.Web.Components.States;
using MeltShop.Web.Components.Weighing;
using MeltShop.Web.Pages.Parts;
using MeltShop.Web.Tests.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Hosting;

namespace MeltShop.Web.Tests.Pages.Parts;

/// <summary>The house components side by side: a state that nobody draws there is one that nobody looks at.</summary>
public sealed class PartsPageTests : ComponentTest
{
    [Fact]
    public void Page_InDevelopment_ShowsEveryStateOfEveryComponent()
    {
        var page = Draw(Environments.Development);

        Assert.Equal(Names<LimitVerdict>(), Seen(page, "[data-verdict]", "data-verdict"));
        Assert.Equal(["band", "distance", "doubt", "repeatability"], Seen(page, ".limit-beside [data-testid]", "data-testid"));
        Assert.Equal(Names<WeighingStanding>(), Seen(page, "[data-standing]", "data-standing"));
        Assert.Equal(Names<ViewState>(), Seen(page, "[data-testid=state]", "data-state"));
        Assert.NotEmpty(page.FindAll("[data-testid=state][data-state=ready] [role=alert]")); // that could not be read again
        Assert.All(Enum.GetNames<RibbonStanding>(), name => Assert.NotEmpty(page.FindAll(".ribbon-" + name.ToLowerInvariant())));
        Assert.Contains(page.FindAll(".limit-value"), value => value.TextContent.StartsWith('<'));
        Assert.All(page.FindAll("[data-testid=control-chart]").Where(chart => chart.QuerySelector("[data-testid=chart-words]")?.TextContent.Contains("diamond", StringComparison.Ordinal) == true), chart => Assert.NotEmpty(chart.QuerySelectorAll(".chart-signal")));
        Assert.NotEmpty(page.FindAll("[data-testid=loading-closed]"));
        Assert.NotEmpty(page.FindAll(".keypad:not([hidden]) [data-key]"));
        Assert.Equal(["drawn", "none"], Seen(page, "[data-testid=control-chart]", "data-limits"));
        Assert.Equal(["number.ambiguous", "number.missing", "number.notANumber", "number.tooLarge"], Seen(page, "[data-field] .field-error", "data-code"));
        Assert.NotEmpty(page.FindAll(".field-input[readonly]"));
        Assert.NotEmpty(page.FindAll("[data-testid=formula-help]"));
        Assert.Equal((2, 1), (page.FindAll("[role=grid]").Count, page.FindAll("[data-testid=cell-findings]").Count));
        Assert.Equal(
            ["large, early", "large, late", "large, open", "small, early", "small, endless", "small, late", "small, open"],
            page.FindAll("ladle-clock").Select(Standing).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Page_Elsewhere_SaysThatItIsNotThere()
    {
        var page = Draw(Environments.Production);

        Assert.NotEmpty(page.FindAll(".notice-heading"));
        Assert.Empty(page.FindAll(".limit, ladle-clock, [role=grid]"));
    }

    private static string Standing(AngleSharp.Dom.IElement clock)
    {
        long? At(string name) => long.TryParse(clock.GetAttribute(name), out var at) ? at : null;
        var standing = At("data-stop") is not { } stop ? "endless" : stop < At("data-now") ? "late" : At("data-early") < At("data-now") ? "early" : "open";
        return $"{(clock.HasAttribute("data-signals") ? "large" : "small")}, {standing}";
    }

    private static IEnumerable<string> Names<T>() where T : struct, Enum => Enum.GetNames<T>().Select(name => name.ToLowerInvariant()).Order(StringComparer.Ordinal);

    private static IEnumerable<string> Seen(IRenderedComponent<PartsPage> page, string selector, string attribute) =>
        page.FindAll(selector).Select(element => element.GetAttribute(attribute)!.ToLowerInvariant() is var seen && attribute != "data-code" ? seen : element.GetAttribute(attribute)!)
            .Distinct().Order(StringComparer.Ordinal);

    private IRenderedComponent<PartsPage> Draw(string environment)
    {
        Services.AddSingleton<IHostEnvironment>(new Named(environment));
        Services.AddSingleton(TimeProvider.System);
        return Render<PartsPage>();
    }

    private sealed class Named(string name) : IHostEnvironment
    {
        public string EnvironmentName { get; set; } = name;
        public string ApplicationName { get; set; } = "MeltShop";
        public string ContentRootPath { get; set; } = "";
        public IFileProvider ContentRootFileProvider { get; set; } = new NullFileProvider();
    }
}
