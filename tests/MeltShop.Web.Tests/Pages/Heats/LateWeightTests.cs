using Bunit;
using MeltShop.Operations.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Components.Entries;

namespace MeltShop.Web.Tests.Pages.Heats;

/// <summary>A weight that is entered later than it was weighed.</summary>
public sealed class LateWeightTests : HeatTest
{
    [Theory]
    [InlineData("40", false, "Weigh in")]
    [InlineData("10", true, "Add to the bath")]
    public async Task Bath_WeightThatComesLate_GoesWhereItsTimeSays(string minutesAgo, bool intoBath, string press)
    {
        await WeighIn("pig", 100);
        Clock.At = Now.AddMinutes(60);
        await GoodSample();
        Clock.At = Now.AddMinutes(30);
        var (weighed, liquidKg) = (Now.AddMinutes(-int.Parse(minutesAgo, System.Globalization.CultureInfo.InvariantCulture)), (await Heat()).Heat.LiquidKg);
        var page = Open();
        Assert.Contains("what went in before the sample of", page.Find("[data-testid=late-weight]").TextContent, StringComparison.Ordinal);
        page.Find("tr[data-material=steel] button").Click();
        Type(page, "weigh-form", "kg", "200");
        Assert.Equal("Add to the bath", page.Find("[data-testid=weigh-form] button[type=submit]").TextContent.Trim());
        Type(page, "weigh-form", "observedAt", minutesAgo);
        Assert.Equal(press, page.Find("[data-testid=weigh-form] button[type=submit]").TextContent.Trim());
        await page.Find("[data-testid=weigh-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=weighed]").Count > 0, Patience);

        var heat = await Heat();
        Assert.Equal(intoBath, heat.Weighings[^1].IntoBath);
        Assert.Equal(weighed, heat.Weighings[^1].Origin.ObservedAt, TimeSpan.FromMilliseconds(1));
        Assert.Equal(194, heat.Heat.LiquidKg - liquidKg, 6); // 97 % of steel is metal
        Assert.Equal(3.65, heat.Samples.Single().Mean(Metallurgy.Elements.Element.C)!.Value, 6);
        Assert.Equal("", Field(page, "weigh-form", "observedAt").QuerySelector("input")!.GetAttribute("value") ?? "");
    }

    /// <summary>Nobody throws turnings onto a bath because they stood in a list; what lies in it already has to be entered.</summary>
    [Fact]
    public async Task Bath_WeightOfWhatIsOnlyCharged_CanBeChosenOnceItIsSaidThatItWentInBefore()
    {
        var id = (await The<AddMaterial>().Run(Founder, new(
            Guid.NewGuid(), Now, "turnings", "Test turnings", MaterialKind.SteelScrap, MaterialUses.Charge, 200, 90, [new("C", 0.3)], "Test figures", "memory"), Cancellation)).Value;
        await WeighIn("pig", 100);
        Clock.At = Now.AddMinutes(60);
        await GoodSample();
        Clock.At = Now.AddMinutes(30);
        var page = Open();
        Assert.False(IsListed());
        Type(page, "weigh-form", "observedAt", "10");
        Assert.False(IsListed());
        Type(page, "weigh-form", "observedAt", "40");
        Assert.True(IsListed());

        page.Find("[data-testid=weigh-form] select").Change($"{id}");
        Type(page, "weigh-form", "kg", "50");
        Assert.Equal("", Note());
        Type(page, "weigh-form", "observedAt", "");
        Assert.Equal("! Meant for the charge alone. If it went in before the sample, say how long ago it was weighed.", Note());
        Assert.Equal(("Add to the bath", $"{id}", "50"), (Button(), Field(page, "weigh-form", "materialId").QuerySelector("select")!.GetAttribute("value"), Field(page, "weigh-form", "kg").QuerySelector("input")!.GetAttribute("value")));
        Type(page, "weigh-form", "observedAt", "40");
        Assert.Equal(("", "Weigh in"), (Note(), Button()));
        await page.Find("[data-testid=weigh-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=weighed]").Count > 0, Patience);
        Assert.Equal(("turnings", false), ((await Heat()).Weighings[^1].MaterialCode, (await Heat()).Weighings[^1].IntoBath));
        Assert.Equal("✓ 50.0\u00a0kg of Test turnings weighed in", page.Find("[data-testid=weighed]").TextContent.Trim());

        string Note() => Field(page, "weigh-form", "materialId").QuerySelector(".field-note")!.TextContent;
        string Button() => page.Find("[data-testid=weigh-form] button[type=submit]").TextContent.Trim();
        bool IsListed() => page.FindAll($"[data-testid=weigh-form] option[value=\"{id}\"]").Count > 0;
    }

    [Fact]
    public async Task Time_Refused_IsListedWhereItHasNoField()
    {
        var page = Open();
        Assert.Empty(page.FindAll("[data-testid=weigh-form] [data-field=observedAt]"));
        await page.Find("[data-testid=weigh-form]").TriggerEventAsync("onentryanswered", new EntryAnsweredEventArgs
        {
            Findings = [new("observedAt", "time.future", [System.Text.Json.JsonSerializer.SerializeToElement("2026-03-02T07:00:00+01:00")])],
        });

        Assert.Contains("ahead of the server’s clock", page.Find("[data-testid=weigh-form] [data-testid=findings] [data-code=\"time.future\"]").TextContent, StringComparison.Ordinal);
    }
}
