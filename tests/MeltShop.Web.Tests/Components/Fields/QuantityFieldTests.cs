using Bunit;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Tests.Components.Fields;

public sealed class QuantityFieldTests : ComponentTest
{
    private readonly EntryForm form = new();

    [Theory]
    [InlineData("3.55")]
    [InlineData("3,55")]
    public void Typed_CommaOrPoint_IsEchoedWithItsUnit(string text)
    {
        var field = Draw(form.Quantity("price", 0, 9999));
        field.Find("input").Change(text);

        Assert.Equal("read as 3.55\u00a0€/t", field.Find(".field-note").TextContent);
        Assert.Equal(text, field.Find("input").GetAttribute("value"));
    }

    [Fact]
    public void Typed_InGerman_IsEchoedWithAComma()
    {
        Speak("de-DE");
        var field = Draw(form.Quantity("price", 0, 9999));
        field.Find("input").Change("3.55");

        Assert.Equal("read as 3,55\u00a0€/t", field.Find(".field-note").TextContent);
    }

    [Fact]
    public void Typed_NoNumber_IsToldAtTheFieldAndKept()
    {
        var field = Draw(form.Quantity("price", 0, 9999));
        field.Find("input").Change("12 euro");

        Assert.Equal("number.notANumber", field.Find(".field-error").GetAttribute("data-code"));
        Assert.Equal("12 euro", field.Find("input").GetAttribute("value"));
        Assert.Equal("true", field.Find("input").GetAttribute("aria-invalid"));
        Assert.Equal(["€/t", "This is not a number. Write digits, with a comma or a point before the decimals."], Heard(field));
        Assert.Equal("alert", field.Find(".field-error").GetAttribute("role"));
    }

    [Fact]
    public void Heard_Empty_IsNamedAndSaysUnitAndRange()
    {
        var field = Draw(form.Quantity("price", 0, 9999, isRequired: true));

        Assert.Equal("Price", field.Find("label").TextContent);
        Assert.Equal(["€/t", "0 to 9999"], Heard(field));
        Assert.Equal(("true", "false"), (field.Find("input").GetAttribute("aria-required"), field.Find("input").GetAttribute("aria-invalid")));
    }

    [Fact]
    public void Keyboard_AfterAChoice_IsInTheFieldAgain()
    {
        var field = Draw(form.Quantity("price", 0, 9999));
        field.Find("input").Change("1,250");
        Assert.All(field.FindAll(".field-choices button"), choice => Assert.False(choice.HasAttribute("tabindex"))); // next stops of the Tab key
        Assert.Equal("Which one do you mean?", field.Find("[role=group]").GetAttribute("aria-label"));
        field.Do(() => field.FindAll(".field-choices button")[0].ClickAsync());

        JSInterop.VerifyFocusAsyncInvoke();
    }

    [Fact]
    public void ReadOnly_Any_CanBeReachedAndNotChanged()
    {
        var input = Render<QuantityField>(parameters => parameters.Add(p => p.Entry, form.Quantity("price")).Add(p => p.Label, "Price").Add(p => p.IsReadOnly, true)).Find("input");

        Assert.True(input.HasAttribute("readonly"));
        Assert.False(input.HasAttribute("disabled"));
    }

    [Fact]
    public void Typed_TwoReadings_AreOfferedAndOneIsTaken()
    {
        var entry = form.Quantity("price", 0, 9999);
        var field = Draw(entry);
        field.Find("input").Change("1,250");
        var choices = field.FindAll(".field-choices button");
        Assert.Equal(["1.25\u00a0€/t", "1250\u00a0€/t"], choices.Select(choice => choice.TextContent.Trim()));
        choices[1].Click();

        Assert.Equal(1250, entry.Value);
        Assert.Empty(field.FindAll(".field-choices"));
    }

    [Fact]
    public void Drawn_Empty_SaysTheRange() => Assert.Contains("0 to 9999", Draw(form.Quantity("price", 0, 9999)).Find(".field-note").TextContent, StringComparison.Ordinal);

    [Theory]
    [InlineData(0, 1_000_000, "0 or more · may stay empty")]
    [InlineData(-1_000_000, 1_000_000, "may stay empty")]
    public void Drawn_EmptyWithAnEndThatNobodyReaches_SaysTheOtherOnly(double least, double most, string note) =>
        Assert.Equal(note, Draw(form.Quantity("price", least, most)).Find(".field-note").TextContent);

    [Fact]
    public void Label_BelongsToItsInput()
    {
        var field = Draw(form.Quantity("price", 0, 9999));

        Assert.Equal(field.Find("input").Id, field.Find("label").GetAttribute("for"));
        Assert.Equal("text", field.Find("input").GetAttribute("type"));
        Assert.False(field.Find("input").HasAttribute("inputmode"));
    }

    [Fact]
    public void Help_WithAFormula_SaysWhereItComesFromAndHolds()
    {
        var formula = MeltShop.Metallurgy.Treatment.MagnesiumFloor.Formula;
        var help = Render<QuantityField>(parameters => parameters.Add(p => p.Entry, form.Quantity("mg")).Add(p => p.Label, "Mg").Add(p => p.Unit, "%").Add(p => p.Formula, formula))
            .Find("[data-testid=formula-help]").TextContent;

        Assert.StartsWith("? Formula and source Mg", help.Trim(), StringComparison.Ordinal);
        Assert.Contains(formula.Expression, help, StringComparison.Ordinal);
        Assert.Contains(formula.Range, help, StringComparison.Ordinal);
        Assert.Contains(formula.Sources[0].ToString(), help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true, null, true, true)]
    [InlineData(false, 0.0, false, false)]
    public void Keypad_OfAField_HasBelowAndMinusWhereTheFieldTakesThem(bool allowsBelow, double? least, bool below, bool minus)
    {
        var input = Draw(form.Quantity("price", least, 9999, allowsBelow: allowsBelow)).Find("input");

        Assert.Equal((below, minus), (input.HasAttribute("data-below"), input.HasAttribute("data-minus")));
    }

    /// <summary>What is said of the input beside its name.</summary>
    private static IEnumerable<string> Heard(IRenderedComponent<QuantityField> field) =>
        field.Find("input").GetAttribute("aria-describedby")!.Split(' ').Select(id => field.Find("#" + id).TextContent.TrimStart('!', ' ').Trim());

    private IRenderedComponent<QuantityField> Draw(QuantityEntry entry) =>
        Render<QuantityField>(parameters => parameters.Add(p => p.Entry, entry).Add(p => p.Label, "Price").Add(p => p.Unit, "€/t"));
}
