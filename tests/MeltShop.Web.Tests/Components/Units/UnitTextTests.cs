using Bunit;
using MeltShop.Metallurgy;
using MeltShop.Records.Sites;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Units;

namespace MeltShop.Web.Tests.Components.Units;

public sealed class UnitTextTests : ComponentTest
{
    private static readonly ShopUnits Imperial = ShopUnits.Of(MassUnit.Pound, TemperatureUnit.Fahrenheit);

    [Fact]
    public void Mass_InPounds_IsPrintedAsAScaleOfThatSizeShowsIt()
    {
        Measure(Imperial);

        Assert.Equal(["2205\u00a0lb", "22.0\u00a0lb", "2.20\u00a0lb"], new[] { 1000.0, 10, 1 }.Select(kg => MassText.Show(kg)));
        Assert.Equal("3500\u00a0lb", MassText.ShowFully(3500 * 0.45359237));
    }

    /// <summary>1000 kg are 2204.6 lb: one stops at 2204, and 10.2 lb over are 11.</summary>
    [Fact]
    public void Mass_ToStopAtAndOver_IsNeverSaidToTheWrongSide()
    {
        Measure(Imperial);

        Assert.Equal("2204\u00a0lb", MassText.ShowDown(1000));
        Assert.Equal("11\u00a0lb", MassText.ShowUp(10.2 * 0.45359237));
    }

    [Fact]
    public void Mass_BesideALimitThatItMisses_IsPrintedApartFromIt()
    {
        Measure(Imperial);

        Assert.NotEqual(MassText.ShowBeside(1000.02, 1000), MassText.ShowBeside(1000, 1000.02));
    }

    [Fact]
    public void Temperature_InFahrenheit_IsPrintedSo()
    {
        Measure(Imperial);

        Assert.Equal("2650\u00a0°F", TemperatureText.Show((2650 - 32) / 1.8));
        Assert.Equal("54.0\u00a0°F", TemperatureText.Difference(30, 1));
    }

    [Fact]
    public void Finding_OfAMass_SpeaksInTheShopsUnit()
    {
        Measure(Imperial);
        var text = Render<FindingText>(parameters => parameters.Add(t => t.Finding, new Finding("kg", "furnace.short", 3500 * 0.45359237)));

        Assert.Contains("3500\u00a0lb", text.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Field_OfAMass_SaysAndReadsTheShopsUnit()
    {
        Measure(Imperial);
        var form = new EntryForm();
        var mass = form.Mass("kg", 0, 10_000);
        var field = Render<QuantityField>(parameters => parameters.Add(f => f.Entry, mass).Add(f => f.Label, "Mass"));
        Assert.Equal("lb", field.Find(".field-unit").TextContent);
        Assert.Contains("0 to 22040", field.Find(".field-note").TextContent, StringComparison.Ordinal);

        field.Find("input").Change("3500");

        Assert.Equal("read as 3500\u00a0lb", field.Find(".field-note").TextContent);
        Assert.Equal(1587.573295, mass.Value!.Value, 1e-9);
    }

    [Fact]
    public void Field_OfAFormThatIsOpen_KeepsTheUnitInWhichItWasDrawn()
    {
        Measure(Imperial);
        var mass = new EntryForm().Mass("kg", 0, 100_000);
        var field = Render<QuantityField>(parameters => parameters.Add(f => f.Entry, mass).Add(f => f.Label, "Mass"));

        Measure(ShopUnits.Recorded);
        field.Find("input").Change("3500");

        Assert.Equal("lb", field.Find(".field-unit").TextContent);
        Assert.Equal(1587.573295, mass.Value!.Value, 1e-9);
    }

    /// <summary>An entry may wait in a browser while the shop chooses other units: it says in which it was typed.</summary>
    [Fact]
    public void Entry_ThatWaitedInABrowser_IsReadInTheUnitInWhichItWasTyped()
    {
        Measure(Imperial);
        var typed = new TapEntry();
        typed.Form.Draw();
        var sent = typed.Sent;
        Measure(ShopUnits.Recorded);

        var taken = new TapEntry();
        foreach (var (name, value) in sent) taken.Belongs(name, value);
        taken.Fill(new Dictionary<string, string> { ["kg"] = "3500", ["temperatureC"] = "2750" });

        Assert.Equal(1587.573295, taken.Kg.Value!.Value, 1e-9);
        Assert.Equal(1510, taken.Temperature.Value);
    }

    [Fact]
    public void Entry_WithoutAWordAboutUnits_IsInThoseOfTheRecords()
    {
        Measure(Imperial);
        var taken = new TapEntry();
        taken.Fill(new Dictionary<string, string> { ["kg"] = "950.5" });

        Assert.Equal(950.5, taken.Kg.Value);
    }

    [Fact]
    public void Dose_WeighedAndNotFedAsWire_IsReadAsAMassWhereItArrives()
    {
        Measure(Imperial);
        var typed = new DoseEntry();
        typed.WeighIt();
        typed.Form.Draw();

        var taken = new DoseEntry();
        foreach (var (name, value) in typed.Sent) taken.Belongs(name, value);
        taken.Fill(new Dictionary<string, string> { ["amount"] = "10" });

        Assert.Equal(4.5359237, taken.Amount.Value!.Value, 1e-9);
    }
}
